//! Where the hours went: all of them as one length, cut by side; under it every stage to the same scale.

use super::{Area, Card, Ink, Pen, Stands, Text, Weight};

/// Up to this share of the whole the longest stretch leaves room for names behind it.
const BESIDE: f64 = 0.45;

pub(super) fn draw(card: &Card, pen: &mut Pen, body: Area) {
    let figures = card.figures;
    let tall = card.tall();
    let whole: f64 = figures.bar.iter().map(|(_, size)| size).sum();
    let figure_room = match (card.shows.hours, tall) {
        (false, _) => 0.0,
        (true, true) => 210.0,
        (true, false) => 260.0,
    };
    // One scale for all of them. Stretches that leave room have their names behind them; else names stand before.
    let largest =
        figures.parts.iter().fold(0.0, |most: f64, part| most.max(part.size)) / whole.max(f64::MIN_POSITIVE);
    let beside = largest <= BESIDE;
    let before = if tall { 300.0 } else { 430.0 };
    let length =
        if beside { body } else { Area { x: body.x + before, w: body.w - before - figure_room, ..body } };
    let scale = length.w / whole.max(f64::MIN_POSITIVE);
    let (name_at, name_room) = if beside {
        let at = body.x + largest * body.w + 36.0;
        (at, body.right() - figure_room - at - 24.0)
    } else {
        (body.x, before - 24.0)
    };
    let thick = if tall { 130.0 } else { 110.0 };
    let bar = Area { y: body.y + 84.0, h: thick, ..length };
    pen.dimension((bar.x, bar.right()), body.y + 24.0, &card.amount(figures.whole), 46.0);
    whole_bar(pen, card, bar, scale);
    let lines = u32::try_from(figures.parts.len()).map_or(1.0, f64::from).max(1.0);
    let top = bar.foot() + if tall { 60.0 } else { 34.0 };
    let pitch = ((body.foot() - top) / lines).min(if tall { 124.0 } else { 92.0 });
    let size = (pitch * 0.6).min(54.0);
    let mut middle = top + pitch / 2.0;
    for part in &figures.parts {
        let plain = Text {
            text: "",
            weight: Weight::One,
            size,
            ink: Ink::Full,
            stands: Stands::Left,
            at: (name_at, middle + size * 0.34),
            most: name_room,
            upright: false,
        };
        pen.text(Text { text: &card.words.name(part.name), ..plain });
        let stretch = Area { x: bar.x, y: middle - pitch * 0.31, w: part.size * scale, h: pitch * 0.62 };
        pen.area(part.made, stretch);
        pen.outline(stretch, Ink::Full, 3.0, None);
        let (text, at) = (card.amount(part.amount), (body.right(), middle + size * 0.34));
        pen.text(Text {
            text: &text,
            stands: Stands::Right,
            at,
            most: (figure_room - 24.0).max(0.0),
            ..plain
        });
        middle += pitch;
    }
    for line in 1..figures.parts.len() {
        let y = top + pitch * u32::try_from(line).map_or(0.0, f64::from);
        pen.line(&[(body.x, y), (body.right(), y)], Ink::Hair, 1.5);
    }
    // The drop line of all of it: what the stages are measured against.
    pen.line(&[(bar.x, bar.foot()), (bar.x, top + pitch * lines)], Ink::Full, 2.5);
}

/// All of them, cut by side.
fn whole_bar(pen: &mut Pen, card: &Card, bar: Area, scale: f64) {
    let mut x = bar.x;
    for (made, size) in card.figures.bar.iter().filter(|(_, size)| *size > 0.0) {
        let piece = Area { x, w: size * scale, ..bar };
        pen.area(*made, piece);
        pen.outline(piece, Ink::Full, 3.5, None);
        x = piece.right();
    }
    pen.outline(bar, Ink::Full, 7.0, None);
}
