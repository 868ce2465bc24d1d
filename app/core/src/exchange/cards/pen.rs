//! The pen: lines, hatched areas, dimension lines and letters, put down as SVG.
//!
//! What it draws it also tells: the box of everything, the size of every hatched area, every text. Without a ground it
//! draws film around its lines, so that they are read over whatever is filmed.

use super::{
    hatching::{Made, PATTERNS},
    lettering::{Lettering, Weight},
};
use std::{collections::BTreeSet, fmt::Write};

/// What a card is drawn on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ground {
    /// Ink on drafting film.
    Film,
    /// Chalk on slate.
    Slate,
    /// Ink on nothing, film around its lines.
    Clear,
}

/// A box, in px from the upper left.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Area {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// How wide.
    pub w: f64,
    /// How high.
    pub h: f64,
}

impl Area {
    /// Its right edge.
    pub fn right(self) -> f64 {
        self.x + self.w
    }

    /// Its lower edge.
    pub fn foot(self) -> f64 {
        self.y + self.h
    }

    pub(super) fn middle(self) -> f64 {
        self.y + self.h / 2.0
    }
}

/// With what something is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ink {
    /// Ink, or chalk.
    Full,
    /// Notes.
    Half,
    /// Construction lines.
    Hair,
    /// The checker's.
    Red,
}

/// Where a text stands by its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Stands {
    Left,
    Middle,
    Right,
}

/// A line of letters.
#[derive(Clone, Copy, Debug)]
pub(super) struct Text<'a> {
    pub text: &'a str,
    pub weight: Weight,
    pub size: f64,
    pub ink: Ink,
    pub stands: Stands,
    /// The point: on the line that letters stand on.
    pub at: (f64, f64),
    /// No wider than this.
    pub most: f64,
    /// Read from below.
    pub upright: bool,
}

/// What was drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawn {
    /// The file.
    pub svg: String,
    /// The box of everything that was drawn.
    pub boxes: Vec<Area>,
    /// Every area that stands for a figure, by what it is made of, swatches apart.
    pub areas: Vec<(Made, Area)>,
    /// Every text, as it is read.
    pub texts: Vec<String>,
}

pub(super) struct Pen<'a> {
    pub letters: &'a Lettering,
    pub ground: Ground,
    size: (f64, f64),
    /// Film around lines; all of it under all that is drawn.
    under: String,
    out: String,
    patterns: BTreeSet<&'static str>,
    drawn: Drawn,
}

/// Px of a card for one of a screen: lines and hatching stand as thick as on a phone held as near.
const SCALE: f64 = 2.4;
/// Film around lines, where there is no ground.
const HALO: f64 = 9.0;

impl<'a> Pen<'a> {
    pub fn new(letters: &'a Lettering, ground: Ground, size: (f64, f64)) -> Pen<'a> {
        let drawn = Drawn::default();
        Pen {
            letters,
            ground,
            size,
            under: String::new(),
            out: String::new(),
            patterns: BTreeSet::new(),
            drawn,
        }
    }

    fn slate(&self) -> bool {
        self.ground == Ground::Slate
    }

    fn ink(&self, ink: Ink) -> &'static str {
        match (ink, self.slate()) {
            (Ink::Full, false) => "#16212b",
            (Ink::Half, false) => "#3b4852",
            (Ink::Hair, false) => "#7b868c",
            (Ink::Red, false) => "#8f1712",
            (Ink::Full, true) => "#f5f4ea",
            (Ink::Half, true) => "#cfd6d5",
            (Ink::Hair, true) => "#72828a",
            (Ink::Red, true) => "#ffb3a1",
        }
    }

    fn film(&self) -> &'static str {
        if self.slate() { "#27333a" } else { "#f3f3ec" }
    }

    fn put(&mut self, area: Area) {
        self.drawn.boxes.push(area);
    }

    /// The ground, its construction grid and its frame with the marks in the middle of each side.
    pub fn frame(&mut self) {
        let (w, h) = self.size;
        if self.ground == Ground::Clear {
            return;
        }
        let (film, grid) = (self.film(), if self.slate() { "#2c3940" } else { "#e4e9e8" });
        let _ = write!(self.out, "<path fill=\"{film}\" d=\"M0 0H{w:.0}V{h:.0}H0z\"/>");
        let mut lines = String::new();
        for at in steps(48.0, w) {
            let _ = write!(lines, "M{at:.0} 0V{h:.0}");
        }
        for at in steps(48.0, h) {
            let _ = write!(lines, "M0 {at:.0}H{w:.0}");
        }
        let _ = write!(self.out, "<path fill=\"none\" stroke=\"{grid}\" stroke-width=\"2\" d=\"{lines}\"/>");
        let (rim, mark) = (26.0, 44.0);
        self.outline(Area { x: rim, y: rim, w: w - 2.0 * rim, h: h - 2.0 * rim }, Ink::Full, 2.5, None);
        for (one, two) in [
            ((w / 2.0, 0.0), (w / 2.0, mark)),
            ((w / 2.0, h - mark), (w / 2.0, h)),
            ((0.0, h / 2.0), (mark, h / 2.0)),
            ((w - mark, h / 2.0), (w, h / 2.0)),
        ] {
            self.line(&[one, two], Ink::Full, 2.5);
        }
    }

    pub fn line(&mut self, points: &[(f64, f64)], ink: Ink, width: f64) {
        let d = points.iter().enumerate().map(|(at, (x, y))| {
            let letter = if at == 0 { 'M' } else { 'L' };
            format!("{letter}{x:.1} {y:.1}")
        });
        let (xs, ys) = (points.iter().map(|it| it.0), points.iter().map(|it| it.1));
        let (left, right) = (xs.clone().fold(f64::MAX, f64::min), xs.fold(f64::MIN, f64::max));
        let (top, foot) = (ys.clone().fold(f64::MAX, f64::min), ys.fold(f64::MIN, f64::max));
        self.stroke(&d.collect::<String>(), ink, width, None);
        self.put(Area { x: left, y: top, w: right - left, h: foot - top });
    }

    /// The edge of a box. `dash`: going on, saved, not there.
    pub fn outline(&mut self, area: Area, ink: Ink, width: f64, dash: Option<&str>) {
        let Area { x, y, w, h } = area;
        self.stroke(&format!("M{x:.1} {y:.1}h{w:.1}v{h:.1}h-{w:.1}z"), ink, width, dash);
        self.put(area);
    }

    fn stroke(&mut self, d: &str, ink: Ink, width: f64, dash: Option<&str>) {
        // Hair lines guide the eye on a ground; over a film they would be bars of their own.
        if self.ground == Ground::Clear && ink != Ink::Hair {
            let (film, wide) = (self.film(), width + HALO);
            let _ = write!(
                self.under,
                "<path fill=\"none\" stroke=\"{film}\" stroke-width=\"{wide:.1}\" stroke-linejoin=\"round\" stroke-linecap=\"round\" d=\"{d}\"/>"
            );
        }
        let ink = self.ink(ink);
        let dash = dash.map(|dash| format!(" stroke-dasharray=\"{dash}\"")).unwrap_or_default();
        let _ = write!(
            self.out,
            "<path fill=\"none\" stroke=\"{ink}\" stroke-width=\"{width:.1}\"{dash} d=\"{d}\"/>"
        );
    }

    /// A polygon without an edge, as the fan of a growth.
    pub fn fan(&mut self, points: &[(f64, f64)]) {
        let fill = if self.slate() { "#34424b" } else { "#e7e8df" };
        let d: String = points.iter().map(|(x, y)| format!("L{x:.1} {y:.1}")).collect();
        let _ = write!(self.out, "<path fill=\"{fill}\" d=\"M{}z\"/>", d.trim_start_matches('L'));
    }

    /// An area that stands for a figure, to scale.
    pub fn area(&mut self, made: Made, area: Area) {
        self.hatched(made, area);
        self.drawn.areas.push((made, area));
    }

    /// A kind's hatching beside its word.
    pub fn swatch(&mut self, made: Made, area: Area) {
        self.hatched(made, area);
        self.outline(area, Ink::Full, 2.5, None);
    }

    fn hatched(&mut self, made: Made, area: Area) {
        let Area { x, y, w, h } = area;
        let [film, slate] = made.washes();
        let wash = if self.slate() { slate } else { film };
        // From its own corner, so that hatching begins alike in every area.
        let shape = format!("transform=\"translate({x:.2} {y:.2})\" d=\"M0 0h{w:.2}v{h:.2}h-{w:.2}z\"");
        let _ = write!(self.out, "<path fill=\"{wash}\" {shape}/>");
        for pattern in made.patterns() {
            self.patterns.insert(pattern);
            let _ = write!(self.out, "<path fill=\"url(#{pattern})\" {shape}/>");
        }
        self.put(area);
    }

    /// Letters; how wide they came out. Nothing to say: nothing drawn.
    pub fn text(&mut self, it: Text) -> f64 {
        let fitted = self.letters.fit(it.weight, it.text, it.size, it.most);
        if fitted.text.trim().is_empty() {
            return 0.0;
        }
        let (size, width) = (fitted.size, fitted.width);
        let back = match it.stands {
            Stands::Left => 0.0,
            Stands::Middle => width / 2.0,
            Stands::Right => width,
        };
        let (x, y) = if it.upright { (it.at.0, it.at.1 + back) } else { (it.at.0 - back, it.at.1) };
        let turn = if it.upright { " rotate(-90)" } else { "" };
        let ink = self.ink(it.ink);
        match self.letters.path(it.weight, &fitted.text) {
            Some(path) => {
                let scale = self.letters.scale(size);
                let place =
                    format!("transform=\"translate({x:.1} {y:.1}){turn} scale({scale:.5} -{scale:.5})\"");
                if self.ground == Ground::Clear {
                    let (film, wide) = (self.film(), HALO / scale);
                    let _ = write!(
                        self.under,
                        "<path {place} fill=\"{film}\" stroke=\"{film}\" stroke-width=\"{wide:.0}\" stroke-linejoin=\"round\" d=\"{path}\"/>"
                    );
                }
                let _ = write!(self.out, "<path {place} fill=\"{ink}\" d=\"{path}\"/>");
            }
            None => {
                self.by_a_font(&fitted.text, size, width, &format!("translate({x:.1} {y:.1}){turn}"), ink)
            }
        }
        let (up, down) = (size * 0.95, size * 0.28);
        self.put(if it.upright {
            Area { x: x - up, y: y - width, w: up + down, h: width }
        } else {
            Area { x, y: y - up, w: width, h: up + down }
        });
        self.drawn.texts.push(fitted.text);
        width
    }

    /// Letters of another script, pressed into their width.
    fn by_a_font(&mut self, text: &str, size: f64, width: f64, place: &str, ink: &str) {
        let escaped = text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
        let shape = format!(
            "font-family=\"Arial Narrow, Roboto Condensed, sans-serif\" font-size=\"{size:.1}\" textLength=\"{width:.1}\" lengthAdjust=\"spacingAndGlyphs\" transform=\"{place}\""
        );
        if self.ground == Ground::Clear {
            let film = self.film();
            let _ = write!(
                self.under,
                "<text {shape} fill=\"{film}\" stroke=\"{film}\" stroke-width=\"{HALO:.0}\" stroke-linejoin=\"round\">{escaped}</text>"
            );
        }
        let _ = write!(self.out, "<text {shape} fill=\"{ink}\">{escaped}</text>");
    }

    /// A head of an arrow, its tip here.
    fn arrow(&mut self, (x, y): (f64, f64), (to_x, to_y): (f64, f64)) {
        let (long, half) = (26.0, 8.0);
        let (back_x, back_y) = (x - to_x * long, y - to_y * long);
        let (side_x, side_y) = (to_y * half, to_x * half);
        let ink = self.ink(Ink::Full);
        let d = format!(
            "M{x:.1} {y:.1}L{:.1} {:.1}L{:.1} {:.1}z",
            back_x + side_x,
            back_y + side_y,
            back_x - side_x,
            back_y - side_y
        );
        if self.ground == Ground::Clear {
            let film = self.film();
            let _ = write!(
                self.under,
                "<path fill=\"{film}\" stroke=\"{film}\" stroke-width=\"{HALO:.0}\" stroke-linejoin=\"round\" d=\"{d}\"/>"
            );
        }
        let _ = write!(self.out, "<path fill=\"{ink}\" d=\"{d}\"/>");
    }

    /// A dimension line over a length, its words in a gap of it.
    pub fn dimension(&mut self, (from, to): (f64, f64), y: f64, words: &str, size: f64) {
        for x in [from, to] {
            self.line(&[(x, y - 22.0), (x, y + 34.0)], Ink::Hair, 2.0);
        }
        let middle = (from + to) / 2.0;
        let text = Text {
            text: words,
            weight: Weight::One,
            size,
            ink: Ink::Full,
            stands: Stands::Middle,
            at: (middle, y + size * 0.34),
            most: (to - from - 150.0).max(0.0),
            upright: false,
        };
        let gap = match self.text(text) {
            0.0 => 0.0,
            width => width / 2.0 + 22.0,
        };
        if gap == 0.0 {
            self.line(&[(from, y), (to, y)], Ink::Full, 2.5);
        } else {
            self.line(&[(from, y), (middle - gap, y)], Ink::Full, 2.5);
            self.line(&[(middle + gap, y), (to, y)], Ink::Full, 2.5);
        }
        self.arrow((from, y), (-1.0, 0.0));
        self.arrow((to, y), (1.0, 0.0));
    }

    /// A dimension line beside a height.
    pub fn height(&mut self, x: f64, (from, to): (f64, f64), words: &str, size: f64) {
        for y in [from, to] {
            self.line(&[(x - 20.0, y), (x + 30.0, y)], Ink::Hair, 2.0);
        }
        let middle = (from + to) / 2.0;
        let text = Text {
            text: words,
            weight: Weight::One,
            size,
            ink: Ink::Full,
            stands: Stands::Middle,
            at: (x + size * 0.34, middle),
            most: (to - from - 150.0).max(0.0),
            upright: true,
        };
        match self.text(text) {
            0.0 => self.line(&[(x, from), (x, to)], Ink::Full, 2.5),
            width => {
                let gap = width / 2.0 + 22.0;
                self.line(&[(x, from), (x, middle - gap)], Ink::Full, 2.5);
                self.line(&[(x, middle + gap), (x, to)], Ink::Full, 2.5);
            }
        }
        self.arrow((x, from), (0.0, -1.0));
        self.arrow((x, to), (0.0, 1.0));
    }

    /// The whole file.
    pub fn finish(self) -> Drawn {
        let (w, h) = self.size;
        let mut svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w:.0}\" height=\"{h:.0}\" viewBox=\"0 0 {w:.0} {h:.0}\"><defs>"
        );
        let (ink, red) = (self.ink(Ink::Full), self.ink(Ink::Red));
        for (id, width, height, paths) in PATTERNS.iter().filter(|it| self.patterns.contains(it.0)) {
            let _ = write!(
                svg,
                "<pattern id=\"{id}\" width=\"{width}\" height=\"{height}\" patternUnits=\"userSpaceOnUse\" patternTransform=\"scale({SCALE:.1})\">"
            );
            for (class, d) in *paths {
                let how = match *class {
                    "solid" => format!("fill=\"{ink}\""),
                    "checkers" => format!("fill=\"none\" stroke=\"{red}\" stroke-width=\"1.3\""),
                    class if class.contains("heavy") => {
                        format!("fill=\"none\" stroke=\"{ink}\" stroke-width=\"3\"")
                    }
                    class if class.contains("round") => {
                        format!("fill=\"none\" stroke=\"{ink}\" stroke-linecap=\"round\"")
                    }
                    _ => format!("fill=\"none\" stroke=\"{ink}\""),
                };
                let _ = write!(svg, "<path {how} d=\"{d}\"/>");
            }
            svg.push_str("</pattern>");
        }
        let _ = write!(svg, "</defs>{}{}</svg>", self.under, self.out);
        Drawn { svg, ..self.drawn }
    }
}

/// Every so many px, up to an end.
fn steps(step: f64, end: f64) -> impl Iterator<Item = f64> {
    std::iter::successors(Some(step), move |at| (at + step < end).then_some(at + step))
}
