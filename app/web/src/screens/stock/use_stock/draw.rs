//! How the ways look: ruled cells, the well, the tin, the rule and the pads.

use super::slots::{self, Said, Slot};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Field, Typing},
        pad::{Pad, PadKey, PadShape, PadTap, figure_keys, measure_keys},
        seg::{Choice, Seg, SegKind},
        steel_rule::SteelRule,
        tin::{Tin, TinChoice, TinWords},
    },
    screens::{
        first_amount,
        stock::{
            pad,
            thing::{self, Thing},
        },
    },
    shell::Desk,
    words::{stock as words, units},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::Books,
    measure::{Dimension, Quantity, Unit},
};

/// Marks of the rule, coarse to fine.
const MARKS: [u32; 5] = [2, 4, 8, 16, 32];

/// The word of a cell.
pub fn label(slot: Slot) -> &'static str {
    match slot {
        Slot::Length => words::length(),
        Slot::Wide => words::wide(),
        Slot::Thick => words::thick(),
        Slot::Pieces => words::pieces(),
        Slot::Count => words::count(),
        Slot::Share | Slot::Content | Slot::Amount => "",
    }
}

/// The ways as ruled cells; what is typed in a side stands under its word.
pub fn ways(thing: &Thing, slots: &[Slot], said: Said, chosen: RwSignal<usize>) -> AnyView {
    if slots.len() < 2 {
        return ().draw();
    }
    let class = if slots.iter().any(|slot| slot.is_side()) { "sides" } else { "" };
    let (thing, slots) = (thing.clone(), slots.to_vec());
    let choices =
        Signal::derive(move || slots.iter().map(|slot| choice(&thing, *slot, said)).collect::<Vec<Choice>>());
    view! {
        <Seg
            name=words::how_said().to_owned()
            kind=SegKind::Modes
            class
            choices
            chosen
            on_choose=Callback::new(move |at| chosen.set(at))
        />
    }
}

fn choice(thing: &Thing, slot: Slot, said: Said) -> Choice {
    let word = thing.word.clone().unwrap_or_else(|| units::long(thing.unit, true));
    let label = match slot {
        Slot::Share => words::share_of(&word),
        Slot::Content => thing.content.map(|(_, unit)| units::short(unit).to_owned()).unwrap_or_default(),
        Slot::Amount => units::short(thing.unit).to_owned(),
        _ => label(slot).to_owned(),
    };
    let typed = said.shown(slot);
    let note = match slot {
        Slot::Pieces if typed.is_empty() => Some("1".to_owned()),
        Slot::Length | Slot::Wide | Slot::Thick | Slot::Pieces => Some(typed),
        Slot::Share | Slot::Content | Slot::Count | Slot::Amount => None,
    };
    Choice { label, note }
}

/// The well of a slot that is typed in.
pub fn well(desk: Desk, thing: &Thing, said: Said, slot: Slot) -> AnyView {
    let over = well_label(thing, slot);
    let unit = {
        let thing = thing.clone();
        Signal::derive(move || well_unit(desk, &thing, said, slot))
    };
    let adds = Signal::derive(move || {
        let lit = if slot.is_side() { said.lit(slot) } else { Vec::new() };
        let text = said.text(slot);
        (!text.is_empty() && !lit.is_empty()).then(|| adds(&text, &lit))
    });
    let typed = move |text: String| {
        said.set_lit(slot, &[]);
        said.set(slot, text);
    };
    pad::focus(slot.field());
    view! {
        <Field
            id=slot.field()
            label=over
            large=true
            typing=Typing::Pad
            value=Signal::derive(move || said.shown(slot))
            unit
            adds
            error=said.error(slot)
            on_input=Callback::new(typed)
        />
    }
}

/// `19 + 1/4 + 1/8`.
fn adds(text: &str, lit: &[u32]) -> String {
    let mut lit = lit.to_vec();
    lit.order();
    let mut sum = text.to_owned();
    for under in lit {
        sum.push_str(" + 1/");
        sum.push_str(&under.to_string());
    }
    sum
}

fn well_label(thing: &Thing, slot: Slot) -> String {
    match slot {
        Slot::Length => words::length_of_one().to_owned(),
        Slot::Wide => words::width_of_one().to_owned(),
        Slot::Thick => words::thickness_of_one().to_owned(),
        Slot::Pieces => words::how_many_pieces().to_owned(),
        Slot::Count => {
            let word = thing.word.as_deref().map(|word| units::several(word, false));
            words::how_many(&word.unwrap_or_else(|| units::long(thing.unit, false)))
        }
        Slot::Share | Slot::Content | Slot::Amount => words::how_much().to_owned(),
    }
}

fn well_unit(desk: Desk, thing: &Thing, said: Said, slot: Slot) -> Option<String> {
    let unit = match slot {
        Slot::Length | Slot::Wide | Slot::Thick => desk.read(|view| said.unit(view)),
        Slot::Content => thing.content?.1,
        Slot::Amount => thing.unit,
        Slot::Count | Slot::Pieces | Slot::Share => return None,
    };
    Some(units::short(unit).to_owned())
}

/// The keys under a slot: rule and pad for a side, figures for a number, the tin for a share.
pub fn keys(desk: Desk, thing: Thing, said: Said, slot: Slot) -> AnyView {
    let linear = slot == Slot::Amount && thing.unit.dimension() == Dimension::Length;
    match slot {
        Slot::Share => tin(desk, thing, said),
        _ if slot.is_side() => {
            let rule = move || (desk.read(|view| said.unit(view)) == Unit::Inch).then(|| rule(said, slot));
            view! { {rule}{sides(desk, said, slot)} }
        }
        _ if linear => lengths(desk, said, slot),
        _ => numbers(desk, said, slot),
    }
}

fn rule(said: Said, slot: Slot) -> AnyView {
    let lit = Signal::derive(move || {
        let lit = said.lit(slot);
        MARKS.map(|under| lit.contains(&under))
    });
    let tap = move |at: usize| {
        let Some(under) = MARKS.get(at) else { return };
        let text = untrack(|| said.text(slot));
        if text.ends_with('/') {
            // A fraction that has no bottom yet gets this one.
            return said.set(slot, format!("{text}{under}"));
        }
        untrack(|| said.light(slot, *under));
    };
    view! {
        <SteelRule
            name=words::rule_name().to_owned()
            names=Signal::stored(words::rule_marks())
            lit
            on_tap=Callback::new(tap)
        />
    }
}

/// Digits, a stroke and three units.
fn sides(desk: Desk, said: Said, slot: Slot) -> AnyView {
    let inches = desk.now_read(first_amount::in_inches);
    let units = if inches {
        [Unit::Foot, Unit::Inch, Unit::Millimetre]
    } else {
        [Unit::Metre, Unit::Centimetre, Unit::Millimetre]
    };
    let tap = move |tap: PadTap| untrack(|| side_tapped(said, slot, &tap, units));
    let keys = measure_keys(&pad::pad_words(), pad::decimal(desk), units.map(units::short));
    units_pad(keys, tap)
}

fn lengths(desk: Desk, said: Said, slot: Slot) -> AnyView {
    let words = [Unit::Foot, Unit::Inch, Unit::Millimetre];
    let tap = move |tap: PadTap| {
        untrack(|| {
            let text = said.text(slot);
            match &tap {
                PadTap::Write(sign) if sign == "/" => said.set(slot, slots::stroke(&text)),
                PadTap::Unit(at) => {
                    if let Some(unit) = words.get(*at) {
                        said.set(slot, format!("{} {} ", text.trim_end(), units::short(*unit)));
                    }
                }
                PadTap::Write(_) | PadTap::RubOut => write(said, slot, text, &tap),
            }
        });
    };
    units_pad(measure_keys(&pad::pad_words(), pad::decimal(desk), words.map(units::short)), tap)
}

fn units_pad(keys: Vec<PadKey>, tap: impl Fn(PadTap) + Send + Sync + 'static) -> AnyView {
    view! {
        <Pad
            name=words::pad_name().to_owned()
            shape=PadShape::Units
            keys=Signal::stored(keys)
            on_tap=Callback::new(tap)
        />
    }
}

fn numbers(desk: Desk, said: Said, slot: Slot) -> AnyView {
    let keys = figure_keys(&pad::pad_words(), pad::decimal(desk));
    let tap = move |tap: PadTap| untrack(|| write(said, slot, said.text(slot), &tap));
    view! { <Pad name=words::pad_name().to_owned() keys=Signal::stored(keys) on_tap=Callback::new(tap)/> }
}

fn side_tapped(said: Said, slot: Slot, tap: &PadTap, units: [Unit; 3]) {
    let (text, lit) = (said.text(slot), said.lit(slot));
    match tap {
        PadTap::Write(sign) if sign == "/" => said.set(slot, slots::stroke(&text)),
        // The finest lit mark goes out first.
        PadTap::RubOut if !lit.is_empty() => {
            let finest = lit.iter().copied().max().unwrap_or_default();
            said.light(slot, finest);
        }
        PadTap::Unit(at) => match units.get(*at) {
            Some(Unit::Foot) if text.ends_with(|c: char| c.is_ascii_digit()) => {
                said.set(slot, format!("{text} ft "));
                said.set_unit(Unit::Inch);
            }
            Some(Unit::Foot) | None => {}
            Some(unit) => {
                if *unit != Unit::Inch {
                    said.set_lit(slot, &[]);
                }
                said.set_unit(*unit);
            }
        },
        PadTap::Write(_) | PadTap::RubOut => write(said, slot, text, tap),
    }
}

fn write(said: Said, slot: Slot, text: String, tap: &PadTap) {
    // A unit goes as it came: whole.
    let whole_unit = text.strip_suffix(" ft ").map(str::to_owned).filter(|_| *tap == PadTap::RubOut);
    if let Some(text) = whole_unit.or_else(|| pad::tapped(text, tap)) {
        said.set(slot, text);
    }
}

/// The drawn tin and its quarters, each with what it costs and leaves.
fn tin(desk: Desk, thing: Thing, said: Said) -> AnyView {
    let source = thing.source;
    let left = Signal::derive(move || {
        desk.books(|books, _| {
            books.shelf_line(source).and_then(|line| line.quantity).map_or(0.0, slots::open_tin)
        })
    });
    let chosen = Signal::derive(move || said.text(Slot::Share).parse::<usize>().ok());
    let takes = Signal::derive(move || {
        let at = chosen.get().and_then(|at| slots::quarters().get(at).copied());
        at.map_or(0.0, thing::number)
    });
    let word = thing.word.clone().unwrap_or_else(|| units::long(thing.unit, true));
    let name = words::share_of(&word);
    let choices = Signal::derive(move || {
        desk.books(|books, view| {
            let choice = |quantity| choice_of(books, view, &thing, quantity);
            slots::quarters().into_iter().map(choice).collect::<Vec<TinChoice>>()
        })
    });
    let drawn = TinWords {
        used_up: words::used_up().to_owned(),
        this_time: words::this_time().to_owned(),
        left: words::left().to_owned(),
    };
    let choose = move |at: usize| untrack(|| said.set(Slot::Share, at.to_string()));
    view! { <Tin name words=drawn left takes choices chosen on_choose=Callback::new(choose)/> }
}

fn choice_of(books: &Books, view: &crate::shell::desk::View, thing: &Thing, quantity: Quantity) -> TinChoice {
    let whole = thing::number(quantity) >= 1.0;
    let word = thing.word.clone().unwrap_or_else(|| units::long(thing.unit, true));
    TinChoice {
        label: if whole { words::whole(&word) } else { thing.amount(view.tongue, quantity) },
        note: leaves(books, view, thing, quantity).unwrap_or_default(),
        figure: books.preview(thing.source, quantity).map(|cost| view.tongue.money(cost)).unwrap_or_default(),
    }
}

/// What a draw of so much leaves, in words; none where it can't be said.
pub fn leaves(
    books: &Books,
    view: &crate::shell::desk::View,
    thing: &Thing,
    quantity: Quantity,
) -> Option<String> {
    let left = books.leaves(thing.source, quantity)?;
    Some(if left.is_negative() {
        words::more_than_left().to_owned()
    } else if left.is_zero() {
        words::empties_it().to_owned()
    } else {
        words::leaves(&units::figure(view.tongue, left, thing.unit))
    })
}
