//! The head of a card: what it is about, of which build, and the figure that leads, over a thick rule.

use super::{About, Amount, Area, Card, Ink, Pen, Stands, Text, Weight};

/// Draws it; gives the room below it.
pub(super) fn head(card: &Card, pen: &mut Pen) -> Area {
    let (width, height) = card.shape.size();
    let (width, height) = (f64::from(width), f64::from(height));
    let tall = card.tall();
    let (edge, top) = if tall { (84.0, 200.0) } else { (104.0, 96.0) };
    let inner = width - 2.0 * edge;
    let red = card.figures.is_dearer();
    let words = card.words;
    let title = if card.shows.title { words.title(card.figures.about, red) } else { String::new() };
    let build = if card.shows.build { words.build() } else { String::new() };
    let figure = card.amount(card.figures.whole);
    let note = note(card);
    let plain = Text {
        text: "",
        weight: Weight::One,
        size: 46.0,
        ink: Ink::Half,
        stands: Stands::Left,
        at: (edge, top),
        most: inner,
        upright: false,
    };
    let (big, lead) = if tall { (150.0, 72.0) } else { (138.0, 66.0) };
    // The figure: beside the words where there is room, else under them.
    let words_most = if tall { inner } else { inner * 0.46 };
    let line = |text, weight, size, ink, at| Text { text, weight, size, ink, at, most: words_most, ..plain };
    let mut y = top + lead * 0.74;
    if !title.is_empty() {
        pen.text(line(&title, Weight::Two, lead, Ink::Full, (edge, y)));
        y += if tall { 74.0 } else { 66.0 };
    }
    if !build.is_empty() {
        pen.text(line(&build, Weight::One, 50.0, Ink::Full, (edge, y)));
    }
    let words_foot = if build.is_empty() && title.is_empty() {
        top
    } else if build.is_empty() {
        y - 40.0
    } else {
        y + 16.0
    };
    let mut foot = words_foot;
    if !figure.is_empty() {
        let base = if tall { words_foot + big * 0.95 } else { top + big * 0.74 };
        leading(card, pen, Text { text: &figure, size: big, at: (width - edge, base), ..plain });
        foot = foot.max(base + 22.0);
    }
    if !note.is_empty() {
        let base = foot + 34.0;
        pen.text(Text { text: &note, stands: Stands::Right, at: (width - edge, base), size: 44.0, ..plain });
        foot = base + 12.0;
    }
    if foot > top {
        foot += 20.0;
        pen.line(&[(edge, foot), (width - edge, foot)], Ink::Full, 6.0);
    }
    let end = if tall { height - 260.0 } else { height - 80.0 };
    let y = foot + if tall { 70.0 } else { 44.0 };
    Area { x: edge, y, w: inner, h: end - y }
}

/// The figure that leads, at the right; its currency before it.
fn leading(card: &Card, pen: &mut Pen, it: Text) {
    let ink = if card.figures.is_dearer() { Ink::Red } else { Ink::Full };
    let most = it.most * if card.tall() { 0.84 } else { 0.42 };
    let wide = pen.text(Text { weight: Weight::Two, ink, stands: Stands::Right, most, ..it });
    let money = matches!(card.figures.whole, Amount::Money(_));
    if card.shows.currency && money {
        let (code, at) = (card.words.currency(), (it.at.0 - wide - 22.0, it.at.1));
        pen.text(Text { text: &code, size: 46.0, stands: Stands::Right, at, most: 130.0, ..it });
    }
}

/// Under the figure: one of so many, and the hours in it.
fn note(card: &Card) -> String {
    let mut notes = Vec::new();
    // Of one item the drawing says how many were made.
    let each = card.figures.each.filter(|_| card.shows.per_item && card.figures.about != About::Item);
    if let Some((count, shown)) = each {
        let words = card.words;
        notes.push(if card.shows.amounts {
            words.each(count, &words.money(shown))
        } else {
            words.made(count)
        });
    }
    notes.extend(Some(card.hours(card.figures.hours)).filter(|it| !it.is_empty()));
    notes.join(", ")
}
