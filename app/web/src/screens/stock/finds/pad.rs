//! The pads under a find: rule and lengths where a side of a board is typed, figures else.

use super::super::{form::Form, pad, use_stock::stroke};
use crate::dom::prelude::*;
use crate::{
    parts::{
        pad::{Pad, PadShape, PadTap, measure_keys},
        steel_rule::SteelRule,
    },
    screens::first_amount,
    shell::Desk,
    words::{stock as words, units},
};
use benchslate_core::measure::{Unit, rule};

/// For the field that has the focus; `sides` are those of a board.
pub fn keys(
    desk: Desk,
    form: Form,
    current: RwSignal<&'static str>,
    sides: &'static [&'static str],
) -> AnyView {
    let side = Memo::new(move |_| sides.contains(&current.get()));
    (move || if side.get() { lengths(desk, form, current) } else { pad::figures(desk, form, current) }).draw()
}

fn lengths(desk: Desk, form: Form, current: RwSignal<&'static str>) -> AnyView {
    let inches = desk.now_read(first_amount::in_inches);
    let units = if inches {
        [Unit::Foot, Unit::Inch, Unit::Millimetre]
    } else {
        [Unit::Metre, Unit::Centimetre, Unit::Millimetre]
    };
    let tap = move |tap: PadTap| {
        let (field, faces) = (current.get_untracked(), units.map(units::short));
        let text = form.now(field);
        let suffix = faces.iter().find_map(|face| text.trim_end().strip_suffix(face));
        match &tap {
            PadTap::Write(sign) if sign == "/" => form.set(field, stroke(&text)),
            PadTap::Unit(at) => {
                if let Some(face) = faces.get(*at).filter(|_| !text.is_empty()) {
                    form.set(field, format!("{} {face} ", suffix.unwrap_or(&text).trim_end()));
                }
            }
            // A unit goes as it came: whole.
            PadTap::RubOut if suffix.is_some() => {
                form.set(field, suffix.unwrap_or_default().trim_end().to_owned());
            }
            PadTap::Write(_) | PadTap::RubOut => {
                if let Some(text) = pad::length_tapped(text, &tap) {
                    form.set(field, text);
                }
            }
        }
    };
    let keys = measure_keys(&pad::pad_words(), pad::decimal(desk), units.map(units::short));
    view! {
        {inches.then(|| marks(form, current))}
        <Pad name=words::pad_name().to_owned() shape=PadShape::Units keys=Signal::stored(keys) on_tap=Callback::new(tap)/>
    }
}

fn marks(form: Form, current: RwSignal<&'static str>) -> AnyView {
    let lit = Signal::derive(move || rule::lit(&form.get(current.get())));
    let tap = move |at: usize| {
        let field = current.get_untracked();
        form.set(field, rule::tapped(&form.now(field), at));
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
