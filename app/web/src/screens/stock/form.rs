//! A form: what is typed field by field, kept as a draft at every key, and what is wrong with it.

use crate::dom::prelude::*;
use crate::{
    parts::field::{Field, Typing},
    screens::shop::to_the_wrong,
    shell::{Desk, draft},
    words::refusal,
};
use benchslate_core::{journal::Id, measure::Refusal};
use std::collections::BTreeMap;

type Texts = BTreeMap<String, String>;

/// Handles on a form. All of it is one text, so that it is one draft.
#[derive(Clone, Copy)]
pub struct Form {
    key: &'static str,
    text: RwSignal<String>,
    typed: Memo<Texts>,
    fields: StoredValue<Fields, LocalStorage>,
    any: Memo<bool>,
    /// What stands in fields until they are typed in.
    offered: RwSignal<Texts>,
    wrong: RwSignal<Texts>,
    /// The receipt that it is a line of.
    pub of: Option<Id>,
}

/// What stands in each field that was asked for. Whoever follows one of them is told of that one only: a part of the
/// sheet that is drawn anew at every key takes the field from under the typing thumb.
struct Fields {
    owner: Owner,
    texts: BTreeMap<String, Memo<String>>,
}

impl Form {
    /// Opens it with what was typed before.
    pub fn open(desk: Desk, key: &'static str) -> Form {
        Form::open_of(desk, key, None)
    }

    /// The same, as a line of a receipt.
    pub fn open_of(desk: Desk, key: &'static str, of: Option<Id>) -> Form {
        let text = RwSignal::new(String::new());
        draft::keep(desk, key, text);
        let typed: Memo<Texts> = Memo::new(move |_| serde_json::from_str(&text.read()).unwrap_or_default());
        let [offered, wrong] = [(); 2].map(|()| RwSignal::new(Texts::new()));
        let owner = Owner::current().unwrap_or_default();
        let fields = StoredValue::new_local(Fields { owner, texts: BTreeMap::new() });
        let any = Memo::new(move |_| !typed.read().is_empty());
        Form { key, text, typed, fields, any, offered, wrong, of }
    }

    /// Lays a draft down for a form that is opened next.
    pub fn lay(desk: Desk, key: &str, filled: Vec<(String, String)>) {
        let typed: Texts = filled.into_iter().filter(|(_, text)| !text.is_empty()).collect();
        if let (Some(store), Ok(text)) = (desk.store(), serde_json::to_string(&typed)) {
            store.put_draft(key, &text);
        }
    }

    /// Fields that hold something until they are typed in, or emptied. No draft is made of it.
    pub fn offer(self, offered: Vec<(String, String)>) {
        self.offered.set(offered.into_iter().filter(|(_, text)| !text.is_empty()).collect());
    }

    /// What stands in a field; followed.
    pub fn get(self, field: &str) -> String {
        self.field(field).get()
    }

    fn field(self, field: &str) -> Memo<String> {
        if let Some(known) = self.fields.with_value(|fields| fields.texts.get(field).copied()) {
            return known;
        }
        let name = field.to_owned();
        let owner = self.fields.with_value(|fields| fields.owner.clone());
        let made = owner.with(|| Memo::new(move |_| self.stands(&name)));
        self.fields.update_value(|fields| {
            fields.texts.insert(field.to_owned(), made);
        });
        made
    }

    fn stands(self, field: &str) -> String {
        if let Some(typed) = self.typed.with(|typed| typed.get(field).cloned()) {
            return typed;
        }
        let offered = self.offered.with(|offered| offered.get(field).cloned());
        let stands = |_: &String| !self.typed.with(|typed| typed.contains_key(&emptied(field)));
        offered.filter(stands).unwrap_or_default()
    }

    /// What stands in a field that offers something until it is typed in, or emptied; followed.
    pub fn get_or(self, field: &str, offered: Option<String>) -> String {
        let typed = self.get(field);
        if typed.is_empty() && self.get(&emptied(field)).is_empty() {
            offered.unwrap_or_default()
        } else {
            typed
        }
    }

    /// Types into such a field: emptied, it stays empty.
    pub fn set_over(self, field: &str, text: String) {
        self.set(&emptied(field), if text.is_empty() { "1" } else { "" });
        self.set(field, text);
    }

    /// What stands in a field now.
    pub fn now(self, field: &str) -> String {
        untrack(|| self.get(field))
    }

    /// What stands in a field, as a signal.
    pub fn signal(self, field: &'static str) -> Signal<String> {
        self.signal_of(field.to_owned())
    }

    /// The same, of a field that is one of several alike.
    pub fn signal_of(self, field: String) -> Signal<String> {
        Signal::derive(move || self.get(&field))
    }

    /// Types into a field; what was wrong with it is no longer said.
    pub fn set(self, field: &str, text: impl Into<String>) {
        let mut typed = self.typed.get_untracked();
        let text = text.into();
        if self.offered.with_untracked(|offered| offered.contains_key(field)) {
            typed.insert(emptied(field), "1".to_owned());
        }
        if text.is_empty() {
            typed.remove(field);
        } else {
            typed.insert(field.to_owned(), text);
        }
        self.right(field);
        self.text.set(serde_json::to_string(&typed).unwrap_or_default());
    }

    /// Says what is wrong with a field, and goes to the first that something is wrong with: it may stand above
    /// what is on view.
    pub fn wrong(self, field: &str, sentence: String) {
        to_the_wrong();
        self.wrong.update(|wrong| {
            wrong.insert(field.to_owned(), sentence);
        });
    }

    /// Nothing is wrong with a field, as far as is known.
    pub fn right(self, field: &str) {
        if self.wrong.with_untracked(|wrong| wrong.contains_key(field)) {
            self.wrong.update(|wrong| {
                wrong.remove(field);
            });
        }
    }

    /// Nothing is wrong anywhere, as far as is known.
    pub fn all_right(self) {
        self.wrong.set(Texts::new());
    }

    /// What is wrong with a field.
    pub fn error(self, field: &'static str) -> Signal<Option<String>> {
        self.error_of(field.to_owned())
    }

    /// The same, of a field that is one of several alike.
    pub fn error_of(self, field: String) -> Signal<Option<String>> {
        Signal::derive(move || self.wrong.with(|wrong| wrong.get(&field).cloned()))
    }

    /// Whether something is wrong.
    pub fn is_wrong(self) -> bool {
        self.wrong.with_untracked(|wrong| !wrong.is_empty())
    }

    /// Whether anything was typed; followed.
    pub fn is_typed(self) -> bool {
        self.any.get()
    }

    /// Reads a field that may stay empty; what can't be read is said by the field.
    pub fn read<T>(self, field: &str, read: impl FnOnce(&str) -> Result<T, Refusal>) -> Option<T> {
        let text = self.now(field);
        if text.trim().is_empty() {
            return None;
        }
        match read(&text) {
            Ok(value) => Some(value),
            Err(refusal) => {
                self.wrong(field, refusal::sentence(&refusal));
                None
            }
        }
    }

    /// Empties it and takes its draft away.
    pub fn done(self, desk: Desk) {
        self.text.set(String::new());
        draft::done(desk, self.key);
    }
}

/// Where a form keeps that a field was emptied.
fn emptied(field: &str) -> String {
    let mut name = field.to_owned();
    name.push_str("-emptied");
    name
}

/// How a field of a form is drawn.
pub struct Cell {
    /// Its place in the form; also its id on the page.
    pub field: &'static str,
    /// Over it.
    pub label: Signal<String>,
    /// Which keyboard.
    pub typing: Typing,
    /// After what is typed: how it is read.
    pub adds: Signal<Option<String>>,
    /// At its end.
    pub unit: Signal<Option<String>>,
    /// In it while it is empty.
    pub hint: &'static str,
    /// `whole`: the whole row.
    pub class: &'static str,
    /// What it holds until it is typed in.
    pub offers: Option<Signal<Option<String>>>,
    /// Where a pad writes: this field, once it has the focus.
    pub current: Option<RwSignal<&'static str>>,
}

impl Cell {
    /// A number.
    pub fn number(field: &'static str, label: &'static str) -> Cell {
        Cell::words(field, label).typing(Typing::Decimal)
    }

    /// Words, or a number with its unit.
    pub fn words(field: &'static str, label: &'static str) -> Cell {
        Cell {
            field,
            label: Signal::stored(label.to_owned()),
            typing: Typing::Words,
            adds: Signal::stored(None),
            unit: Signal::stored(None),
            hint: "",
            class: "",
            offers: None,
            current: None,
        }
    }

    /// With another label.
    pub fn label(self, label: Signal<String>) -> Cell {
        Cell { label, ..self }
    }

    /// With this at its end.
    pub fn unit(self, unit: Signal<Option<String>>) -> Cell {
        Cell { unit, ..self }
    }

    /// With this after what is typed.
    pub fn adds(self, adds: Signal<Option<String>>) -> Cell {
        Cell { adds, ..self }
    }

    /// With this at its end, whatever happens.
    pub fn of(self, unit: &'static str) -> Cell {
        self.unit(Signal::stored(Some(unit.to_owned())))
    }

    /// With this in it while it is empty.
    pub fn hint(self, hint: &'static str) -> Cell {
        Cell { hint, ..self }
    }

    /// With this in it until something else is typed.
    pub fn offers(self, offered: Signal<Option<String>>) -> Cell {
        Cell { offers: Some(offered), ..self }
    }

    /// Over the whole row.
    pub fn whole(self) -> Cell {
        Cell { class: "whole", ..self }
    }

    /// Written by a pad of ours: it writes where the focus is.
    pub fn padded(self, current: RwSignal<&'static str>) -> Cell {
        Cell { current: Some(current), ..self }.typing(Typing::Pad)
    }

    fn typing(self, typing: Typing) -> Cell {
        Cell { typing, ..self }
    }

    /// In a form.
    pub fn draw(self, form: Form) -> AnyView {
        let Cell { field, label, typing, adds, unit, hint, class, offers, current } = self;
        let value = match offers {
            Some(offered) => Signal::derive(move || form.get_or(field, offered.get())),
            None => form.signal(field),
        };
        let input = move |text: String| match offers {
            Some(_) => form.set_over(field, text),
            None => form.set(field, text),
        };
        let hint = (!hint.is_empty()).then(|| hint.to_owned());
        view! {
            <Field
                id=field
                label
                value
                typing
                adds
                unit
                hint=Signal::stored(hint)
                error=form.error(field)
                class
                on_focus=Callback::new(move |()| if let Some(current) = current { current.set(field) })
                on_input=Callback::new(input)
            />
        }
    }
}
