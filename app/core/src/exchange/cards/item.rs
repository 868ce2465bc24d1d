//! What one cost: all that were made as one length cut in so many pieces; one piece grown to its full width, by kind.

use super::{Area, Card, Ink, Pen, Rows, hatching::Made, rows};

/// As many pieces are told apart.
const PIECES: f64 = 60.0;

pub(super) fn draw(card: &Card, pen: &mut Pen, body: Area) {
    let figures = card.figures;
    let tall = card.tall();
    let count = figures.each.map_or(1, |(count, _)| count).max(1);
    let whole: f64 = figures.bar.iter().map(|(_, size)| size).sum();
    let scale = body.w / whole.max(f64::MIN_POSITIVE);
    let thick = if tall { 100.0 } else { 84.0 };
    let words = if card.shows.per_item { card.words.made(count) } else { String::new() };
    pen.dimension((body.x, body.right()), body.y + 24.0, &words, 44.0);
    let grown = if count == 1 && figures.bar.len() == 1 {
        Area { y: body.y + 84.0, h: if tall { 300.0 } else { 220.0 }, ..body }
    } else {
        let top = body.y + 76.0 + thick + if tall { 90.0 } else { 66.0 };
        let grown = Area { y: top, h: if tall { 170.0 } else { 140.0 }, ..body };
        let all = Area { y: body.y + 76.0, h: thick, ..body };
        grow(card, pen, all, grown, scale);
        grown
    };
    let sum: f64 = figures.parts.iter().map(|part| part.size).sum();
    let mut x = grown.x;
    for part in &figures.parts {
        let piece = Area { x, w: part.size / sum * grown.w, ..grown };
        pen.area(part.made, piece);
        pen.outline(piece, Ink::Full, 2.5, None);
        x = piece.right();
    }
    pen.outline(grown, Ink::Full, 7.0, None);
    let top = grown.foot() + if tall { 50.0 } else { 30.0 };
    let columns = if tall { 1 } else { 2 };
    let lines = figures.parts.len().div_ceil(columns).max(1);
    let pitch = (body.foot() - top) / u32::try_from(lines).map_or(1.0, f64::from);
    let pitch = pitch.min(if tall { 104.0 } else { 84.0 });
    let gap = 90.0;
    let wide = if columns == 1 { body.w } else { (body.w - gap) / 2.0 };
    for (column, parts) in figures.parts.chunks(lines).enumerate() {
        let x = body.x + u32::try_from(column).map_or(0.0, f64::from) * (wide + gap);
        let at = Area { x, y: top, w: wide, h: body.foot() - top };
        rows(card, pen, Rows { at, pitch }, parts);
    }
}

/// All that were made, and the fan from one of them.
fn grow(card: &Card, pen: &mut Pen, all: Area, grown: Area, scale: f64) {
    let figures = card.figures;
    let count = figures.each.map_or(1, |(count, _)| count).max(1);
    let mut x = all.x;
    for (made, size) in &figures.bar {
        let piece = Area { x, w: size * scale, ..all };
        pen.area(*made, piece);
        if *made == Made::Plain {
            cuts(pen, piece, f64::from(count));
        }
        pen.outline(piece, if *made == Made::Loss { Ink::Red } else { Ink::Full }, 3.5, None);
        x = piece.right();
    }
    let good = figures.bar.first().map_or(0.0, |(_, size)| size * scale);
    let one = Area { w: good / f64::from(count), ..all };
    pen.fan(&[(one.x, one.foot()), (one.right(), one.foot()), (grown.right(), grown.y), (grown.x, grown.y)]);
    for (from, to) in
        [((one.x, one.foot()), (grown.x, grown.y)), ((one.right(), one.foot()), (grown.right(), grown.y))]
    {
        pen.line(&[from, to], Ink::Full, 2.5);
    }
    pen.outline(one, Ink::Full, 8.0, None);
}

fn cuts(pen: &mut Pen, bar: Area, count: f64) {
    if count > PIECES {
        return;
    }
    let step = bar.w / count;
    let mut x = bar.x + step;
    while x < bar.right() - step / 2.0 {
        pen.line(&[(x, bar.y), (x, bar.foot())], Ink::Full, 2.0);
        x += step;
    }
}
