//! Cost cards: a build's figures as a drawing to lay over its film.
//!
//! In: figures of core ([`figures`]), what they are called ([`Words`]), what the maker chose to show ([`Shows`]). Out: an SVG
//! whose letters are outlines, so that it looks alike everywhere; the device makes a PNG of it. Hatched areas are to scale.
//! Never: a text that was not chosen, a box past the edge. Kept by: the property tests here.
//!
//! Floating point is allowed here: it is px of a drawing. Figures come in as core rounds and apportions them.
#![allow(clippy::float_arithmetic, reason = "px of a drawing; no figure is worked out")]

mod figures;
pub mod hatching;
mod head;
mod hours;
mod item;
mod kinds;
mod lettering;
mod pen;
mod salvage;
#[cfg(test)]
mod tests;

pub use figures::{About, Amount, Figures, Name, Part, figures};
pub use lettering::Lettering;
pub use pen::{Area, Drawn, Ground};

use crate::measure::{Seconds, Shown};
use lettering::Weight;
use pen::{Ink, Pen, Stands, Text};

/// What a file of a card is called by browsers.
pub const MEDIA_TYPE: &str = "image/svg+xml";
/// Where the outlines of the letters lie beside the page.
pub const LETTERING: &str = "cards/lettering.json";

/// How the film is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// 16:9.
    Wide,
    /// 9:16.
    Tall,
}

impl Shape {
    /// Px across and down.
    pub fn size(self) -> (u32, u32) {
        match self {
            Shape::Wide => (1920, 1080),
            Shape::Tall => (1080, 1920),
        }
    }

    /// Its name in a file name.
    pub fn code(self) -> &'static str {
        match self {
            Shape::Wide => "16x9",
            Shape::Tall => "9x16",
        }
    }
}

/// What the maker chose to show: nothing else is in the drawing, nor in the file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shows {
    /// What the card is about, in words.
    pub title: bool,
    /// What the build is called.
    pub build: bool,
    /// Figures of money.
    pub amounts: bool,
    /// Figures of hours.
    pub hours: bool,
    /// The code of the currency.
    pub currency: bool,
    /// How many were made, and what one of them cost.
    pub per_item: bool,
}

impl Shows {
    /// Little: a title may hold a client's name, hours and what is left of them are nobody's business unasked.
    pub const MODEST: Shows =
        Shows { title: true, build: false, amounts: true, hours: false, currency: true, per_item: false };

    /// A card's own figures are on it from the start.
    pub fn at_first(about: About) -> Shows {
        match about {
            About::Kinds | About::Salvage => Shows::MODEST,
            About::Hours => Shows { hours: true, ..Shows::MODEST },
            About::Item => Shows { per_item: true, ..Shows::MODEST },
        }
    }
}

/// What things are called, and how figures are written.
pub trait Words {
    /// What the card is about; `dearer`: salvage that came dearer than new.
    fn title(&self, about: About, dearer: bool) -> String;
    /// What the build is called.
    fn build(&self) -> String;
    /// The code of the currency; empty where there is none.
    fn currency(&self) -> String;
    /// A part.
    fn name(&self, name: Name) -> String;
    /// Money, grouped, without its currency.
    fn money(&self, shown: Shown) -> String;
    /// Hours.
    fn hours(&self, hours: Seconds) -> String;
    /// How many were made.
    fn made(&self, count: u32) -> String;
    /// What one of so many cost.
    fn each(&self, count: u32, figure: &str) -> String;
}

/// A card as it is to be.
pub struct Card<'a> {
    /// What may be shown.
    pub figures: &'a Figures,
    /// What is.
    pub shows: Shows,
    /// How the film is held.
    pub shape: Shape,
    /// What it is drawn on.
    pub ground: Ground,
    /// What things are called.
    pub words: &'a dyn Words,
}

/// Draws it.
pub fn draw(card: &Card, letters: &Lettering) -> Drawn {
    let (width, height) = card.shape.size();
    let mut pen = Pen::new(letters, card.ground, (f64::from(width), f64::from(height)));
    pen.frame();
    let body = head::head(card, &mut pen);
    match card.figures.about {
        About::Kinds => kinds::draw(card, &mut pen, body),
        About::Salvage => salvage::draw(card, &mut pen, body),
        About::Hours => hours::draw(card, &mut pen, body),
        About::Item => item::draw(card, &mut pen, body),
    }
    pen.finish()
}

impl Card<'_> {
    fn tall(&self) -> bool {
        self.shape == Shape::Tall
    }

    /// An amount where it was chosen, else nothing.
    fn amount(&self, amount: Amount) -> String {
        match amount {
            Amount::Money(shown) if self.shows.amounts => self.words.money(shown),
            Amount::Hours(hours) if self.shows.hours => self.words.hours(hours),
            Amount::Money(_) | Amount::Hours(_) | Amount::Unknown => String::new(),
        }
    }

    /// Hours beside an amount of money.
    fn hours(&self, hours: Option<Seconds>) -> String {
        hours.filter(|_| self.shows.hours).map(|it| self.words.hours(it)).unwrap_or_default()
    }
}

/// How rows are set.
struct Rows {
    /// From the swatch to the end of the figure.
    at: Area,
    /// From one row to the next.
    pitch: f64,
}

/// Rows of swatch, name, hours and figure, one under the other; gives the middle of each.
fn rows(card: &Card, pen: &mut Pen, Rows { at, pitch }: Rows, parts: &[Part]) -> Vec<f64> {
    let size = (pitch * 0.68).min(58.0);
    let mut middles = Vec::new();
    let mut middle = at.y + pitch / 2.0;
    for part in parts {
        let red = part.name == Name::Dearer;
        let ink = if red { Ink::Red } else { Ink::Full };
        let swatch = Area { x: at.x, y: middle - size * 0.42, w: size * 1.3, h: size * 0.84 };
        match part.name {
            Name::Instead => pen.outline(swatch, Ink::Full, 2.5, None),
            Name::Saved => pen.outline(swatch, Ink::Full, 3.0, Some("13 8")),
            Name::Kind(_) | Name::Stage(_) | Name::Others(_) | Name::Took | Name::OwnTime | Name::Dearer => {
                pen.swatch(part.made, swatch);
            }
        }
        if !middles.is_empty() {
            let y = middle - pitch / 2.0;
            pen.line(&[(at.x, y), (at.right(), y)], Ink::Hair, 1.5);
        }
        let base = middle + size * 0.34;
        let mut amount = card.amount(part.amount);
        if matches!(part.name, Name::Took | Name::OwnTime) && !amount.is_empty() {
            amount.insert(0, '\u{2212}');
        }
        let text = Text {
            text: &amount,
            weight: Weight::One,
            size,
            ink,
            stands: Stands::Right,
            at: (at.right(), base),
            most: at.w * 0.48,
            upright: false,
        };
        let figure = pen.text(text);
        let (from, name) = (swatch.right() + size * 0.5, card.words.name(part.name));
        let room = (at.right() - from - figure - size * 0.5).max(0.0);
        let hours = card.hours(part.hours);
        let note = pen.letters.fit(Weight::One, &hours, size * 0.74, room * 0.4).width;
        let note_room = if note > 0.0 { note + size * 0.4 } else { 0.0 };
        let label =
            Text { text: &name, stands: Stands::Left, at: (from, base), most: room - note_room, ..text };
        let wide = pen.text(label);
        let after = (from + wide + size * 0.4, base);
        pen.text(Text {
            text: &hours,
            size: size * 0.74,
            ink: Ink::Half,
            at: after,
            most: room * 0.4,
            ..label
        });
        middles.push(middle);
        middle += pitch;
    }
    middles
}
