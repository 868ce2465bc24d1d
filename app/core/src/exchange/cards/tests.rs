//! Cards of random builds: whatever the names, currencies and amounts, the drawing keeps its laws.
//!
//! Source: library — the XML parser `roxmltree` 0.20; the figures are invented.

use super::*;
use crate::{costing::CostKind, fixture::fixture, measure::Money};
use hatching::Made;
use proptest::prelude::*;

fn letters() -> Lettering {
    Lettering::read(include_str!("../../../../../public/cards/lettering.json")).expect("the lettering")
}

/// Every text begins with what it is, so that a test knows it again.
struct Told {
    long: String,
    currency: String,
}

impl Words for Told {
    fn title(&self, _about: About, dearer: bool) -> String {
        format!("T{} {}", u8::from(dearer), self.long)
    }
    fn build(&self) -> String {
        format!("B {}", self.long)
    }
    fn currency(&self) -> String {
        format!("C{}", self.currency)
    }
    fn name(&self, name: Name) -> String {
        format!("N {name:?} {}", self.long)
    }
    fn money(&self, shown: Shown) -> String {
        format!("M{}{}", shown.text(), self.currency)
    }
    fn hours(&self, hours: Seconds) -> String {
        format!("H{}", hours.0)
    }
    fn made(&self, count: u32) -> String {
        format!("P{count}")
    }
    fn each(&self, count: u32, figure: &str) -> String {
        format!("P{count} {figure}")
    }
}

fn shown(micros: i128, minor: u8) -> Shown {
    Shown::alone(Money::from_micros(micros), minor)
}

fn part(name: Name, made: Made, micros: i128, minor: u8) -> Part {
    let size = f64::try_from(Money::from_micros(micros).to_decimal()).expect("a number").max(0.0);
    Part { name, made, size, amount: Amount::Money(shown(micros, minor)), hours: Some(Seconds(5_400)) }
}

prop_compose! {
    fn any_figures()(
        sizes in prop::collection::vec(0_i128..10_i128.pow(15), 1..11),
        about in prop::sample::select(About::ALL.to_vec()), minor in 0_u8..5, count in 1_u32..80, loss in any::<bool>(),
    ) -> Figures {
        // Something was spent.
        let sizes: Vec<i128> = sizes.into_iter().enumerate().map(|(at, it)| if at == 0 { it + 1 } else { it }).collect();
        let kinds = sizes.iter().zip(CostKind::ALL);
        let mut parts: Vec<Part> = kinds.map(|(size, kind)| part(Name::Kind(kind), Made::Kind(kind), *size, minor)).collect();
        let sum: i128 = sizes.iter().sum();
        let whole = Amount::Money(shown(sum, minor));
        let mut bar = vec![(Made::Piece, 1.0), (Made::Film, 2.5)];
        if about == About::Item {
            bar = vec![(Made::Plain, 12.0)];
            bar.extend(loss.then_some((Made::Loss, 1.5)));
        }
        if about == About::Salvage {
            let at = |place: usize| sizes.get(place).copied().unwrap_or(7);
            let (instead, took, own) = (at(0), at(1), at(2));
            let left = instead - took - own;
            let (name, made) = if left < 0 { (Name::Dearer, Made::Loss) } else { (Name::Saved, Made::Plain) };
            parts = vec![
                part(Name::Instead, Made::Plain, instead, minor),
                part(Name::Took, Made::Kind(CostKind::Salvaged), took, minor),
                part(Name::OwnTime, Made::Kind(CostKind::Labour), own, minor),
                part(name, made, left.abs(), minor),
            ];
        }
        if about == About::Hours {
            let whole: f64 = parts.iter().map(|part| part.size).sum();
            bar = vec![(Made::Piece, whole * 0.7), (Made::Film, whole * 0.3)];
        }
        Figures { about, whole, parts, hours: Some(Seconds(7_260)), each: Some((count, shown(sum, minor))), bar }
    }
}

prop_compose! {
    fn any_shows()(ticks in prop::array::uniform6(any::<bool>())) -> Shows {
        let [title, build, amounts, hours, currency, per_item] = ticks;
        Shows { title, build, amounts, hours, currency, per_item }
    }
}

fn drawn(figures: &Figures, shows: Shows, shape: Shape, ground: Ground, words: &Told) -> Drawn {
    draw(&Card { figures, shows, shape, ground, words }, &letters())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn a_card_is_xml_and_nothing_of_it_lies_past_its_edge(
        figures in any_figures(), shows in any_shows(), long in "\\PC{0,90}", currency in "[A-Z]{0,3}",
        tall in any::<bool>(), ground in prop::sample::select(vec![Ground::Film, Ground::Slate, Ground::Clear]),
    ) {
        let shape = if tall { Shape::Tall } else { Shape::Wide };
        let drawn = drawn(&figures, shows, shape, ground, &Told { long, currency });
        prop_assert!(roxmltree::Document::parse(&drawn.svg).is_ok());
        let (width, height) = shape.size();
        for area in &drawn.boxes {
            prop_assert!(area.x >= 0.0 && area.y >= 0.0 && area.w >= 0.0 && area.h >= 0.0, "{area:?}");
            prop_assert!(area.right() <= f64::from(width) && area.foot() <= f64::from(height), "{area:?}");
        }
    }

    #[test]
    fn no_text_stands_on_it_that_was_not_chosen(figures in any_figures(), shows in any_shows(), tall in any::<bool>()) {
        let shape = if tall { Shape::Tall } else { Shape::Wide };
        let words = Told { long: "x".into(), currency: "CAD".into() };
        let drawn = drawn(&figures, shows, shape, Ground::Film, &words);
        for text in &drawn.texts {
            let chosen = match text.trim_start_matches('\u{2212}').chars().next() {
                Some('T') => shows.title,
                Some('B') => shows.build,
                Some('M') => shows.amounts,
                Some('H') => shows.hours,
                Some('C') => shows.currency && shows.amounts,
                Some('P') => shows.per_item,
                Some('N') => true,
                _ => false,
            };
            prop_assert!(chosen, "{text} of {shows:?}");
            prop_assert!(shows.amounts || !text.contains(" M"), "{text}");
        }
        // A file holds no words beside its drawing.
        prop_assert!(!drawn.svg.contains("<text") && !drawn.svg.contains("<title"));
    }

    #[test]
    fn hatched_areas_are_to_scale(figures in any_figures(), tall in any::<bool>()) {
        let shape = if tall { Shape::Tall } else { Shape::Wide };
        let words = Told { long: String::new(), currency: "CAD".into() };
        let drawn = drawn(&figures, Shows::MODEST, shape, Ground::Film, &words);
        // Of the parts alone, whichever drawing they stand in: length or height by figure is the same for all.
        let mut scale = None::<f64>;
        for part in figures.parts.iter().filter(|part| part.size > 0.0 && part.made != Made::Plain) {
            let Some((_, area)) = drawn.areas.iter().rfind(|(made, _)| *made == part.made) else { continue };
            let extent = if figures.about == About::Kinds { area.h } else { area.w };
            let by = extent / part.size;
            let first = *scale.get_or_insert(by);
            prop_assert!((by / first - 1.0).abs() < 1e-6, "{part:?} {area:?}");
        }
        prop_assert!(figures.about == About::Salvage || scale.is_some());
    }

    #[test]
    fn a_text_always_fits(text in "\\PC{0,120}", size in 20.0_f64..180.0, most in 0.0_f64..900.0) {
        let fitted = letters().fit(Weight::Two, &text, size, most);
        prop_assert!(fitted.width <= most || fitted.text.is_empty());
        prop_assert!(fitted.size >= size * 0.59);
    }
}

#[test]
fn a_text_gets_smaller_before_it_is_cut() {
    let letters = letters();
    let whole = letters.width(Weight::One, "Gymnasium-floor trays", 50.0);
    let fitted = letters.fit(Weight::One, "Gymnasium-floor trays", 50.0, whole * 0.8);
    assert_eq!(fitted.text, "Gymnasium-floor trays");
    assert!(fitted.size < 41.0, "{fitted:?}");
    let cut = letters.fit(Weight::One, "Gymnasium-floor trays", 50.0, whole * 0.4);
    assert!(cut.text.ends_with('…') && cut.text.starts_with("Gym"), "{cut:?}");
}

#[test]
fn a_name_in_another_script_is_written_by_a_font_within_its_room() {
    let figures = Figures {
        about: About::Kinds,
        whole: Amount::Unknown,
        parts: vec![part(Name::Kind(CostKind::Labour), Made::Kind(CostKind::Labour), 5_000_000, 2)],
        hours: None,
        each: None,
        bar: Vec::new(),
    };
    let words = Told { long: "椅子 <&>".into(), currency: String::new() };
    let drawn = drawn(&figures, Shows::MODEST, Shape::Wide, Ground::Film, &words);
    let xml = roxmltree::Document::parse(&drawn.svg).expect("xml");
    let texts = xml.descendants().filter(|node| node.has_tag_name("text"));
    assert!(texts.clone().all(|text| text.attribute("textLength").is_some()) && texts.count() >= 2);
}

#[test]
fn figures_of_a_card_are_those_of_the_sheet() {
    let it = fixture(
        "
        person Ana 20
        build trays items 4
        lot maple salvaged 40 paid 20 yield 1 new 7 on 2026-02-02
        stretch Ana reclaim min 120 for maple on 2026-02-03
        sort maple good 40 culled 0
        draw 10 maple for trays on 2026-02-04
        stretch Ana sand min 180 for trays
        stretch Ana edit min 60 for trays side film
        made trays 4
        ",
    );
    let (shop, books, build) = (it.shop(), it.books(), it.id("trays"));
    let of = |about| figures(&shop, &books, build, about).expect("a card");
    let money = |amount: Amount| match amount {
        Amount::Money(shown) => shown.text(),
        Amount::Hours(hours) => (hours.0 / 60).to_string(),
        Amount::Unknown => String::new(),
    };
    let rows = |about| {
        let figures = of(about);
        let parts = figures.parts.iter().map(|part| format!("{:?} {}", part.name, money(part.amount)));
        (money(figures.whole), parts.collect::<Vec<_>>())
    };
    assert_eq!(
        rows(About::Kinds),
        ("95.00".into(), vec!["Kind(Salvaged) 15.00".into(), "Kind(Labour) 80.00".into()])
    );
    let saved =
        vec!["Instead 70.00".into(), "Took 5.00".into(), "OwnTime 10.00".into(), "Saved 55.00".into()];
    assert_eq!(rows(About::Salvage), ("55.00".into(), saved));
    // Hours of the film are no cost of the piece: (15 + 60) ÷ 4.
    assert_eq!(
        rows(About::Item),
        ("18.75".into(), vec!["Kind(Salvaged) 3.75".into(), "Kind(Labour) 15.00".into()])
    );
    assert_eq!(of(About::Kinds).each.map(|(count, shown)| (count, shown.text())), Some((4, "18.75".into())));
    assert_eq!(of(About::Hours).parts.len(), 2);
    assert_eq!(rows(About::Hours).0, "240");
}

#[test]
fn a_build_without_figures_has_no_cards() {
    let it = fixture("build trays");
    let (shop, books) = (it.shop(), it.books());
    for about in About::ALL {
        assert_eq!(figures(&shop, &books, it.id("trays"), about), None);
    }
}
