//! Our lettering as outlines, so that a card needs no font where it is shown: `public/cards/lettering.json`.
//!
//! Written by `app/xtask/lettering.py` from the two pens that the program ships. Here: how wide a text is, the path of it,
//! and how it is made to fit. What has a letter that isn't in it (another script) is drawn by the font of whoever looks,
//! pressed into the width that it was given.

use serde::Deserialize;

/// Which of the two pens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// Everything else.
    One,
    /// Titles and answers.
    Two,
}

/// Both pens, letter by letter.
#[derive(Clone, Debug)]
pub struct Lettering {
    em: f64,
    letters: Vec<char>,
    one: Vec<Glyph>,
    two: Vec<Glyph>,
}

#[derive(Clone, Debug)]
struct Glyph {
    width: f64,
    path: String,
}

#[derive(Deserialize)]
struct Stored {
    em: u32,
    letters: String,
    pens: [StoredPen; 2],
}

#[derive(Deserialize)]
struct StoredPen {
    widths: Vec<u32>,
    paths: String,
}

/// A text as it will be drawn: how large, how much of it, and how wide that is.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitted {
    /// What of it there is room for.
    pub text: String,
    /// Size of the letters, px.
    pub size: f64,
    /// Px.
    pub width: f64,
}

/// How small letters may get before a text is cut, as a share of their size.
const LEAST: f64 = 0.6;
/// How much smaller at a time.
const STEP: f64 = 0.05;
/// In place of what is cut.
const CUT: char = '…';
/// Of a letter that isn't in the lettering, by its em: Latin-like, and as wide as it is high.
const UNKNOWN: f64 = 0.6;
const UNKNOWN_WIDE: f64 = 1.0;

impl Lettering {
    /// Reads the file. None: it is another one.
    pub fn read(text: &str) -> Option<Lettering> {
        let Stored { em, letters, pens: [one, two] } = serde_json::from_str(text).ok()?;
        let letters: Vec<char> = letters.chars().collect();
        let pen = |stored: StoredPen| {
            let paths = stored.paths.split('\n');
            let glyphs: Vec<Glyph> = stored
                .widths
                .iter()
                .zip(paths)
                .map(|(width, path)| Glyph { width: f64::from(*width), path: path.to_owned() })
                .collect();
            (glyphs.len() == letters.len()).then_some(glyphs)
        };
        let (one, two) = (pen(one)?, pen(two)?);
        (em > 0 && letters.is_sorted()).then_some(Lettering { em: f64::from(em), letters, one, two })
    }

    /// Units of its outlines in one px of letters of this size, the other way round.
    pub(super) fn scale(&self, size: f64) -> f64 {
        size / self.em
    }

    fn glyph(&self, weight: Weight, letter: char) -> Option<&Glyph> {
        let at = self.letters.binary_search(&letter).ok()?;
        match weight {
            Weight::One => self.one.get(at),
            Weight::Two => self.two.get(at),
        }
    }

    /// Width in px at a size.
    pub fn width(&self, weight: Weight, text: &str, size: f64) -> f64 {
        let ems = text.chars().map(|letter| match self.glyph(weight, letter) {
            Some(glyph) => glyph.width / self.em,
            None if letter >= '\u{1100}' => UNKNOWN_WIDE,
            None => UNKNOWN,
        });
        ems.sum::<f64>() * size
    }

    /// The outlines of a text from 0 to its right, in their own units; none where a letter is missing.
    pub(super) fn path(&self, weight: Weight, text: &str) -> Option<String> {
        let (mut path, mut at) = (String::new(), 0.0);
        for letter in text.chars() {
            let glyph = self.glyph(weight, letter)?;
            if !glyph.path.is_empty() {
                path.push_str(&format!("M{at:.0} 0{}", glyph.path));
            }
            at += glyph.width;
        }
        Some(path)
    }

    /// Made to fit: smaller by steps, then cut.
    pub fn fit(&self, weight: Weight, text: &str, size: f64, most: f64) -> Fitted {
        let text: String = text.chars().filter(|it| !it.is_control()).collect();
        let mut share = 1.0;
        while share > LEAST {
            let width = self.width(weight, &text, size * share);
            if width <= most {
                return Fitted { text, size: size * share, width };
            }
            share -= STEP;
        }
        let (size, mut kept) = (size * LEAST, text);
        loop {
            let mut cut = kept.trim_end().to_owned();
            if cut.is_empty() {
                return Fitted { text: cut, size, width: 0.0 };
            }
            cut.push(CUT);
            let width = self.width(weight, &cut, size);
            if width <= most {
                return Fitted { text: cut, size, width };
            }
            kept.pop();
        }
    }
}
