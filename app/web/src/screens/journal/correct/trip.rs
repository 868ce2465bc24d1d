//! A drive put right: how far, what the way cost, and who bears how many parts of it.

use super::{DAY, How, Spec, Typed, dec};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Field, Typing},
        pick::{Choosable, Pick},
        sum_row::Group,
    },
    screens::{
        hours::choices,
        journal::facts,
        stock::form::{Cell, Form},
    },
    shell::Desk,
    words::{
        common,
        journal::{self as words, Label},
    },
};
use benchslate_core::{
    journal::kinds::{Bearer, Share, Trip},
    measure::number,
};

pub(super) const TRIP: [Spec; 3] =
    [("km", Label::Km, How::Number), ("fee", Label::Fee, How::Money), (DAY, Label::Day, How::Day)];

/// The bearers that a form asks about, in their order: codes, a space between them.
pub const SHARED: &str = "shared";
/// The choice of one more.
const MORE: &str = "shared-more";
/// Parts of a lot that is typed in the same form.
const OWN: &str = "parts-own";

pub(super) fn fill(it: &Trip) -> Vec<(String, String)> {
    let parts = it.parts();
    let codes: Vec<String> = parts.iter().map(|share| choices::code(share.bearer)).collect();
    let mut filled = vec![
        ("km".to_owned(), it.km.plain()),
        ("fee".to_owned(), dec(it.fee)),
        (SHARED.to_owned(), codes.join(" ")),
    ];
    filled.extend(parts.iter().enumerate().map(|(at, share)| (field(at), share.parts.to_string())));
    filled
}

pub(super) fn trip(typed: &Typed, before: &Trip) -> Trip {
    let shares = shares(typed.form);
    Trip {
        on: typed.on(before.on),
        km: typed.number("km"),
        fee: typed.money("fee"),
        // What comes to the same stays as it was written.
        shares: if shares == before.parts() { before.shares.clone() } else { shares },
    }
}

/// The parts as typed. An empty field bears none; somebody must.
pub fn shares(form: Form) -> Vec<Share> {
    let mut shares = Vec::new();
    let mut anyone = false;
    for (at, bearer) in bearers(&form.now(SHARED)).into_iter().enumerate() {
        let field = field(at);
        let empty = form.now(&field).trim().is_empty();
        match form.read(&field, number::whole) {
            Some(0) => form.wrong(&field, words::one_part_at_least().to_owned()),
            Some(parts) => shares.push(Share { bearer, parts }),
            None => {}
        }
        anyone |= !empty;
    }
    if !anyone {
        form.wrong(&field(0), words::nobody_bears_it().to_owned());
    }
    shares
}

/// How a drive is shared that is typed with a new lot: its own parts, and whoever else it was for. Fields that can't
/// be read count as none; where `loud`, they say so.
pub fn with_lot(form: Form, lot: Bearer, loud: bool) -> Vec<Share> {
    let read = |field: &str| match loud {
        true => form.read(field, number::whole),
        false => number::whole(&form.get(field)).ok(),
    };
    let own = if form.get(OWN).trim().is_empty() { Some(1) } else { read(OWN) };
    let others = bearers(&form.get(SHARED)).into_iter().enumerate().map(|(at, of)| (of, read(&field(at))));
    let all = [(lot, own)].into_iter().chain(others);
    all.filter_map(|(bearer, parts)| Some(Share { bearer, parts: parts.filter(|it| *it > 0)? })).collect()
}

/// Its fields: the lot's own parts are asked for once somebody shares the drive.
pub fn draw_with_lot(desk: Desk, form: Form) -> AnyView {
    let own = move || {
        (!form.get(SHARED).is_empty()).then(|| {
            let usual = Signal::stored(Some("1".to_owned()));
            Cell::number(OWN, words::parts_of_this_lot()).offers(usual).draw(form)
        })
    };
    parts(desk, form, own.draw())
}

/// A field for each bearer, and a choice of one more.
pub fn draw(desk: Desk, form: Form) -> AnyView {
    parts(desk, form, ().draw())
}

fn parts(desk: Desk, form: Form, first: AnyView) -> AnyView {
    let codes = Memo::new(move |_| form.get(SHARED));
    let named = move || {
        let bearers = bearers(&codes.read());
        desk.read(|view| bearers.iter().map(|bearer| facts::bearer(view, *bearer)).collect::<Vec<String>>())
    };
    let rows =
        each(move || named().into_iter().enumerate().collect(), move |(at, name)| part(form, at, &name));
    let more = Signal::derive(move || {
        let shared = bearers(&codes.read());
        let mut more: Vec<Choosable> = vec![(String::new(), common::none().to_owned())];
        let fresh = |(code, _): &Choosable| choices::bearer(code).is_none_or(|it| !shared.contains(&it));
        more.extend(desk.read(|view| choices::bearers(view, "")).into_iter().filter(fresh));
        more
    });
    view! {
        <Group title=words::shared_in_parts().to_owned()/>
        <Cells>
            {first}
            {rows}
            <Pick
                id=MORE
                class="whole"
                label=words::shared_with_more().to_owned()
                choices=more
                value=String::new()
                on_choose=Callback::new(move |code: String| share_with(form, &code))
            />
        </Cells>
    }
}

fn part(form: Form, at: usize, name: &str) -> AnyView {
    let typed = field(at);
    view! {
        <Field
            id=field(at)
            label=words::parts_for(name)
            typing=Typing::Decimal
            hint=words::no_parts().to_owned()
            value=form.signal_of(field(at))
            error=form.error_of(field(at))
            on_input=Callback::new(move |text: String| form.set(&typed, text))
        />
    }
}

/// One more, with one part.
fn share_with(form: Form, code: &str) {
    if choices::bearer(code).is_none() {
        return;
    }
    let mut shared = form.now(SHARED);
    let at = bearers(&shared).len();
    if at > 0 {
        shared.push(' ');
    }
    shared.push_str(code);
    form.set(&field(at), "1");
    form.set(SHARED, shared);
}

fn bearers(codes: &str) -> Vec<Bearer> {
    codes.split(' ').filter_map(choices::bearer).collect()
}

pub fn field(at: usize) -> String {
    format!("parts-{at}")
}
