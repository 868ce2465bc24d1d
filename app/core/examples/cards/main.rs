//! Every cost card of a saved journal as SVG, to look at: `cargo run --example cards -p benchslate-core -- FILE FOLDER`.
//!
//! Letters from `public/cards/lettering.json`; names are codes, for words are the program's.

#![allow(clippy::expect_used, reason = "a program for those who build this one, not part of it")]

use benchslate_core::{
    costing::Books,
    exchange::{
        cards::{About, Card, Ground, Lettering, Name, Shape, Shows, Words, draw, figures},
        jsonl,
    },
    journal::{Journal, Shop},
    measure::{Instant, Seconds, Shown, When, Zone},
};

struct Codes<'a> {
    shop: &'a Shop,
    title: &'a str,
}

impl Words for Codes<'_> {
    fn title(&self, about: About, dearer: bool) -> String {
        let code = about.code().replace('-', " ");
        if dearer { format!("{code}, dearer") } else { code }
    }

    fn build(&self) -> String {
        self.title.to_owned()
    }

    fn currency(&self) -> String {
        "CAD".to_owned()
    }

    fn name(&self, name: Name) -> String {
        match name {
            Name::Kind(kind) => kind.code().to_owned(),
            Name::Stage(id) => self.shop.stages.get(&id).map(|it| it.name.clone()).unwrap_or_default(),
            Name::Others(_) | Name::Instead | Name::Took | Name::OwnTime | Name::Saved | Name::Dearer => {
                format!("{name:?}")
            }
        }
    }

    fn money(&self, shown: Shown) -> String {
        shown.text()
    }

    fn hours(&self, hours: Seconds) -> String {
        let (hours, minutes) = hours.hours_minutes();
        format!("{hours} h {minutes:02}")
    }

    fn made(&self, count: u32) -> String {
        format!("{count} made")
    }

    fn each(&self, count: u32, figure: &str) -> String {
        format!("{figure} each of {count}")
    }
}

fn main() {
    let mut words = std::env::args().skip(1);
    let (file, folder) = (words.next().expect("a journal"), words.next().expect("a folder"));
    let mut journal = Journal::default();
    let bytes = std::fs::read(file).expect("a file that can be read");
    jsonl::check_bytes(&journal, &bytes).expect("a journal").merge_into(&mut journal);
    let zone = Zone::utc();
    let as_of =
        words.next().map_or(Instant(i64::from(i32::MAX)), |it| When::parse(&it).expect("a moment").instant);
    let shop = Shop::fold(&journal, &zone);
    let books = Books::close(&shop, as_of);
    let letters = std::fs::read_to_string("public/cards/lettering.json").expect("the lettering");
    let letters = Lettering::read(&letters).expect("the lettering");
    let all = Shows { title: true, build: true, amounts: true, hours: true, currency: true, per_item: true };
    for (at, (id, build)) in shop.builds.iter().enumerate() {
        for about in About::ALL {
            let Some(figures) = figures(&shop, &books, *id, about) else { continue };
            for shape in [Shape::Wide, Shape::Tall] {
                for (name, ground) in
                    [("film", Ground::Film), ("slate", Ground::Slate), ("clear", Ground::Clear)]
                {
                    let codes = Codes { shop: &shop, title: &build.title };
                    let card = Card { figures: &figures, shows: all, shape, ground, words: &codes };
                    let drawn = draw(&card, &letters);
                    let path = format!("{folder}/{at}-{}-{}-{name}.svg", about.code(), shape.code());
                    std::fs::write(path, drawn.svg).expect("a folder to write to");
                }
            }
        }
    }
}
