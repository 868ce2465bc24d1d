//! True cost by kind: the core, a column to scale, a leader from each layer to its row.

use super::{Area, Card, Ink, Pen, Rows, rows};

pub(super) fn draw(card: &Card, pen: &mut Pen, body: Area) {
    let parts = &card.figures.parts;
    let sum: f64 = parts.iter().map(|part| part.size).sum();
    let tall = card.tall();
    let words = card.amount(card.figures.whole);
    let lines = u32::try_from(parts.len()).map_or(1.0, f64::from).max(1.0);
    // A few kinds need no column as high as the card.
    let height = body.h.min(lines * 150.0).max(body.h * 0.7);
    let column = Area { x: body.x + 64.0, w: if tall { 140.0 } else { 190.0 }, h: height, ..body };
    let mut top = column.y;
    let mut middles = Vec::new();
    for part in parts {
        let layer = Area { y: top, h: part.size / sum * column.h, ..column };
        if part.size > 0.0 {
            pen.area(part.made, layer);
        }
        middles.push(layer.middle());
        top = layer.foot();
    }
    let mut top = column.y;
    for part in parts.iter().filter(|part| part.size > 0.0) {
        pen.line(&[(column.x, top), (column.right(), top)], Ink::Full, 2.5);
        top += part.size / sum * column.h;
    }
    pen.outline(column, Ink::Full, 7.0, None);
    pen.height(column.x - 40.0, (column.y, column.foot()), &words, if tall { 40.0 } else { 42.0 });
    let gap = if tall { 70.0 } else { 130.0 };
    let from = column.right() + gap;
    let at = Area { x: from, y: column.y, w: body.right() - from, h: column.h };
    let rows = rows(card, pen, Rows { at, pitch: column.h / lines }, parts);
    for ((layer, row), part) in middles.iter().zip(rows).zip(parts) {
        if part.size > 0.0 {
            let (edge, bend) = (column.right(), gap * 0.32);
            pen.line(
                &[(edge + 4.0, *layer), (edge + bend, *layer), (from - bend, row), (from - 8.0, row)],
                Ink::Full,
                2.5,
            );
            pen.line(&[(edge, *layer), (edge + 14.0, *layer)], Ink::Full, 9.0);
        }
    }
}
