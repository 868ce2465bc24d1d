//! Sortings and culls put right.

use super::{
    DAY, How, Spec, Typed,
    chosen::{self, Choices},
    tick,
};
use crate::words::journal::Label;
use benchslate_core::{
    journal::{
        Id,
        kinds::{Cull, Link, Sort},
    },
    measure::Unit,
};

pub const SORT: [Spec; 4] = [
    ("good", Label::Good, How::Quantity),
    ("culled", Label::Culled, How::Quantity),
    ("link", Label::Link, How::OneOf(Choices::Link)),
    (DAY, Label::Day, How::Day),
];

pub const CULL: [Spec; 4] = [
    ("quantity", Label::Culled, How::Quantity),
    ("link", Label::Link, How::OneOf(Choices::Link)),
    ("unexpected", Label::Unexpected, How::Tick),
    (DAY, Label::Day, How::Day),
];

pub fn fill_sort(it: &Sort) -> Vec<(&'static str, String)> {
    let link = chosen::link_code(it.link.unwrap_or(Link::NailsOut));
    vec![("good", it.good.plain()), ("culled", it.culled.plain()), ("link", link)]
}

pub fn sort(typed: &Typed, before: &Sort) -> Sort {
    let unit = unit(typed, before.lot);
    Sort {
        on: typed.on(before.on),
        good: typed.quantity("good", unit),
        culled: typed.quantity("culled", unit),
        link: said(typed, before.link, Link::NailsOut),
        ..before.clone()
    }
}

pub fn fill_cull(it: &Cull) -> Vec<(&'static str, String)> {
    let link = chosen::link_code(it.link.unwrap_or(Link::Milled));
    vec![("quantity", it.quantity.plain()), ("link", link), ("unexpected", tick(it.unexpected))]
}

pub fn cull(typed: &Typed, before: &Cull) -> Cull {
    Cull {
        on: typed.on(before.on),
        quantity: typed.quantity("quantity", unit(typed, before.lot)),
        link: said(typed, before.link, Link::Milled),
        unexpected: typed.ticked("unexpected"),
        ..before.clone()
    }
}

fn unit(typed: &Typed, lot: Id) -> Unit {
    typed.view.shop.lots.get(&lot).map_or(Unit::Each, |lot| lot.unit)
}

/// What was not said before and still stands as it is read then stays unsaid.
fn said(typed: &Typed, before: Option<Link>, unsaid: Link) -> Option<Link> {
    let chosen = chosen::link(&typed.form.now("link"));
    chosen.filter(|it| before.is_some() || *it != unsaid)
}
