//! How the ways look: ruled cells, the well, the tin, the rule and the pads.

use super::slots::{self, Said, Slot};
use super::strips;
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
    words::{stock as words, strips as strip_words, units},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::{Books, Leaves},
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
        Slot::Strips => strip_words::strips(),
        Slot::Strip => strip_words::strip_wide(),
        Slot::Kerf => strip_words::kerf(),
        Slot::Area => words::area_of_one(),
        Slot::Coated => words::pieces(),
        Slot::Coats => words::coats(),
        Slot::OnTop => words::on_top(),
        Slot::Share | Slot::Content | Slot::Amount => "",
    }
}

/// The ways as ruled cells; what is typed in a side stands under its word. What is coated is one way, and has cells
/// of its own under it.
pub fn ways(desk: Desk, thing: &Thing, slots: &[Slot], said: Said, chosen: RwSignal<usize>) -> AnyView {
    let of = |keep: &dyn Fn(Slot) -> bool| -> Vec<usize> {
        (0..slots.len()).filter(|at| slots.get(*at).is_some_and(|slot| keep(*slot))).collect()
    };
    let ways = of(&|slot| slot.over() == slot);
    let groups = [of(&Slot::is_coating), of(&Slot::is_ripping)];
    let stored = StoredValue::new((thing.clone(), slots.to_vec(), groups));
    let under = move || {
        let (thing, all, groups) = stored.get_value();
        let over = all.get(chosen.get())?.over();
        let here = |group: &Vec<usize>| {
            group.first().and_then(|at| all.get(*at)).is_some_and(|slot| slot.over() == over)
        };
        let group = groups.into_iter().find(here)?;
        Some(cells(desk, &thing, &all, group, said, chosen, true))
    };
    let over = (ways.len() > 1).then(|| cells(desk, thing, slots, ways, said, chosen, false));
    view! { {over}{under} }
}

/// Ruled cells of some of the slots, by their places. `typed`: what is coated, each with what is typed in it.
fn cells(
    desk: Desk,
    thing: &Thing,
    slots: &[Slot],
    places: Vec<usize>,
    said: Said,
    chosen: RwSignal<usize>,
    typed: bool,
) -> AnyView {
    let of: Vec<Slot> = places.iter().filter_map(|at| slots.get(*at).copied()).collect();
    let class = if typed || of.iter().any(|slot| slot.is_side()) { "sides" } else { "" };
    let name = match of.first() {
        Some(slot) if typed && slot.is_ripping() => strip_words::how_ripped(),
        Some(_) if typed => words::how_coated(),
        _ => words::how_said(),
    };
    let (thing, all) = (thing.clone(), slots.to_vec());
    let choices = {
        let of = of.clone();
        Signal::derive(move || {
            of.iter().map(|slot| choice(desk, &thing, *slot, said, typed)).collect::<Vec<Choice>>()
        })
    };
    let at = Signal::derive(move || {
        let slot = all.get(chosen.get()).copied();
        let is = |one: &Slot| Some(*one) == slot || (!typed && slot.map(Slot::over) == Some(*one));
        of.iter().position(is).unwrap_or(usize::MAX)
    });
    let choose = move |at: usize| {
        if let Some(place) = places.get(at) {
            chosen.set(*place);
        }
    };
    view! {
        <Seg
            name=name.to_owned()
            kind=SegKind::Modes
            class
            choices
            chosen=at
            on_choose=Callback::new(choose)
        />
    }
}

fn choice(desk: Desk, thing: &Thing, slot: Slot, said: Said, typed_in: bool) -> Choice {
    let word = thing.word.clone().unwrap_or_else(|| units::long(thing.unit, true));
    let label = match slot {
        Slot::Share => words::share_of(&word),
        Slot::Content => thing.content.map(|(_, unit)| units::short(unit).to_owned()).unwrap_or_default(),
        Slot::Amount => units::short(thing.unit).to_owned(),
        Slot::Area if !typed_in => words::area_and_coats().to_owned(),
        _ => label(slot).to_owned(),
    };
    let typed = said.shown(slot);
    let note = match slot {
        Slot::Area if !typed_in => None,
        Slot::Pieces if !said.text(Slot::Strips).trim().is_empty() => {
            Some(strip_words::by_strips().to_owned())
        }
        Slot::Pieces | Slot::Coated | Slot::Coats if typed.is_empty() => Some("1".to_owned()),
        Slot::OnTop if typed.is_empty() => Some("0".to_owned()),
        Slot::Kerf if typed.is_empty() => {
            let inches = desk.read(first_amount::in_inches);
            Some(strips::usual_kerf(inches).to_owned())
        }
        Slot::Length | Slot::Wide | Slot::Thick | Slot::Pieces | Slot::Area | Slot::Coated | Slot::Coats => {
            Some(typed)
        }
        Slot::Strips | Slot::Strip | Slot::Kerf | Slot::OnTop => Some(typed),
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
        Slot::Area => words::area_to_coat().to_owned(),
        Slot::Coated => words::how_many_pieces().to_owned(),
        Slot::Coats => words::how_many_coats().to_owned(),
        Slot::OnTop => words::lost_on_top().to_owned(),
        Slot::Strips => strip_words::how_many().to_owned(),
        Slot::Strip => strip_words::width_of_one().to_owned(),
        Slot::Kerf => strip_words::what_a_cut_takes().to_owned(),
        Slot::Share | Slot::Content | Slot::Amount => words::how_much().to_owned(),
    }
}

fn well_unit(desk: Desk, thing: &Thing, said: Said, slot: Slot) -> Option<String> {
    let unit = match slot {
        _ if slot.is_side() => desk.read(|view| said.unit(view)),
        Slot::OnTop => return Some("%".to_owned()),
        Slot::Content => thing.content?.1,
        Slot::Amount => thing.unit,
        // A cross between two sides, or a unit of its own, says by itself what it is.
        Slot::Area if said.text(slot).contains(|c: char| c.is_alphabetic() || c == '×') => return None,
        Slot::Area => desk.read(slots::area_units).0,
        _ => return None,
    };
    Some(units::short(unit).to_owned())
}

/// The keys under a slot: rule and pad for a side, figures for a number, the tin for a share.
pub fn keys(desk: Desk, thing: Thing, said: Said, slot: Slot) -> AnyView {
    let linear = slot == Slot::Amount && thing.unit.dimension() == Dimension::Length;
    match slot {
        Slot::Share => tin(desk, thing, said),
        Slot::Area => areas(desk, said),
        _ if slot.is_side() => {
            // Under two rows of cells what it comes to needs the room; a fraction is typed with its stroke.
            let inches = move || !slot.is_ripping() && desk.read(|view| said.unit(view)) == Unit::Inch;
            let rule = move || inches().then(|| rule(said, slot));
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

/// Digits, two units of area, and the cross between two sides.
fn areas(desk: Desk, said: Said) -> AnyView {
    let inches = desk.now_read(first_amount::in_inches);
    // Both, whatever the shop measures in: tins are printed in either.
    let units =
        if inches { [Unit::SquareFoot, Unit::SquareMetre] } else { [Unit::SquareMetre, Unit::SquareFoot] };
    let faces = units.map(units::short);
    let tap = move |tap: PadTap| {
        untrack(|| {
            let text = said.text(Slot::Area);
            let unit = |at: usize| faces.get(at).filter(|_| !text.is_empty() && !text.contains('×'));
            let suffix = faces.iter().find_map(|face| text.strip_suffix(face));
            match &tap {
                PadTap::Write(sign) if sign == "/" => said.set(Slot::Area, slots::stroke(&text)),
                PadTap::Unit(2) => said.set(Slot::Area, crossed(&text)),
                PadTap::Unit(at) => {
                    if let Some(face) = unit(*at) {
                        said.set(Slot::Area, format!("{} {face}", suffix.unwrap_or(&text).trim_end()));
                    }
                }
                // A unit goes as it came: whole.
                PadTap::RubOut if suffix.is_some() => {
                    said.set(Slot::Area, suffix.unwrap_or_default().trim_end().to_owned());
                }
                PadTap::Write(_) | PadTap::RubOut => write(said, Slot::Area, text, &tap),
            }
        });
    };
    let [one, other] = faces;
    units_pad(measure_keys(&pad::pad_words(), pad::decimal(desk), [one, other, "×"]), tap)
}

/// With a cross after the first side, once.
fn crossed(text: &str) -> String {
    if text.is_empty() || text.contains('×') { text.to_owned() } else { format!("{} × ", text.trim_end()) }
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
    if let Some(text) = whole_unit.or_else(|| pad::length_tapped(text, tap)) {
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
    let said = |quantity: Quantity| units::figure(view.tongue, quantity, thing.unit);
    Some(match books.leaves(thing.source, quantity)? {
        Leaves::Short => words::more_than_left().to_owned(),
        Leaves::Left { there, to_come } if there.is_zero() && to_come.is_zero() => {
            words::empties_it().to_owned()
        }
        Leaves::Left { there, to_come } if to_come.is_zero() => words::leaves(&said(there)),
        Leaves::Left { there, to_come } => words::leaves_and_to_come(&said(there), &said(to_come)),
    })
}
