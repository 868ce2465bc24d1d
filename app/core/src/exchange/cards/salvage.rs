//! Salvage against new: the price new as a length, what it took and own time laid into it, what is left dashed; past it, red.

use super::{Area, Card, Figures, Ink, Name, Part, Pen, Rows, hatching::Made, rows};

pub(super) fn draw(card: &Card, pen: &mut Pen, body: Area) {
    let figures = card.figures;
    let of = |name: Name| figures.parts.iter().find(|part| part.name == name);
    let size = |name: Name| of(name).map_or(0.0, |part| part.size);
    let (instead, laid) = (size(Name::Instead), size(Name::Took) + size(Name::OwnTime));
    let scale = body.w / instead.max(laid).max(f64::MIN_POSITIVE);
    let tall = card.tall();
    let board = Area { y: body.y + 84.0, w: instead * scale, h: if tall { 230.0 } else { 190.0 }, ..body };
    let words = of(Name::Instead).map(|part| dimensioned(card, part)).unwrap_or_default();
    pen.dimension((board.x, board.right()), body.y + 24.0, &words, 46.0);
    laid_in(pen, figures, board, scale);
    let mut all: Vec<Part> = figures.parts.clone();
    let last = all.pop();
    let lines = u32::try_from(figures.parts.len()).map_or(1.0, f64::from).max(1.0);
    let top = board.foot() + if tall { 90.0 } else { 60.0 };
    let pitch = ((body.foot() - top) / lines).min(if tall { 120.0 } else { 92.0 });
    let at = Area { y: top, h: pitch * lines, ..body };
    rows(card, pen, Rows { at, pitch }, &all);
    let Some(last) = last else { return };
    let rule = top + pitch * (lines - 1.0);
    pen.line(&[(body.x, rule), (body.right(), rule)], Ink::Full, 5.0);
    rows(card, pen, Rows { at: Area { y: rule + 8.0, ..at }, pitch }, &[last]);
}

fn dimensioned(card: &Card, part: &Part) -> String {
    let (name, amount) = (card.words.name(part.name), card.amount(part.amount));
    if amount.is_empty() { name } else { format!("{name} {amount}") }
}

fn laid_in(pen: &mut Pen, figures: &Figures, board: Area, scale: f64) {
    let mut x = board.x;
    let laid = figures.parts.iter().filter(|part| matches!(part.name, Name::Took | Name::OwnTime));
    for part in laid.filter(|part| part.size > 0.0) {
        let piece = Area { x, w: part.size * scale, ..board };
        pen.area(part.made, piece);
        pen.outline(piece, Ink::Full, 5.0, None);
        x = piece.right();
    }
    let end = board.right();
    if x < end - 1.0 {
        let rest = Area { x, w: end - x, ..board };
        pen.outline(rest, Ink::Full, 5.0, Some("26 16"));
        return;
    }
    if x > end + 1.0 {
        let (up, past) = (26.0, Area { x: end, y: board.y - 16.0, w: x - end, h: board.h + 32.0 });
        pen.area(Made::Loss, past);
        pen.outline(past, Ink::Red, 6.0, None);
        pen.line(&[(end, board.y - up), (end, board.foot() + up)], Ink::Full, 12.0);
    }
}
