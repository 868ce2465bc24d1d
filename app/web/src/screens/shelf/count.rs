//! A walk along the shelf: what the books say beside what lies there, the difference drawn as it is typed. Kept one by one
//! or all together.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Field, Typing},
        key::{Key, KeyKind},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
    },
    screens::{
        first_amount, shop,
        stock::{
            form::Form,
            thing::{self, Thing},
        },
        trouble::Troubles,
    },
    shell::{
        Desk, Go,
        desk::{After, Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{common, shelf as words, stock, units},
};
use benchslate_core::{
    costing::Books,
    journal::{
        Change, Id, On,
        kinds::{Origin, Shelf, ShelfState},
    },
    measure::{Dec, InOrder, Quantity, letters::small, marks},
    timing::likely::offers_stock,
};

/// Something that can be counted, and what the books say of it.
#[derive(Clone, PartialEq)]
struct Row {
    thing: Thing,
    left: Option<Quantity>,
    label: String,
}

impl Row {
    /// Where a form keeps what was counted of it.
    fn field(&self) -> String {
        format!("count-{}", self.thing.id())
    }
}

/// The sheet.
#[component]
pub fn CountSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "count");
    let text = RwSignal::new(String::new());
    let rows = Memo::new(move |_| desk.books(rows));
    let found = Memo::new(move |_| {
        let text = text.get();
        let mut rows = rows.get();
        rows.retain(|row| thing::is_found(&row.thing.name, &text));
        rows.into_iter().map(|row| row.field()).collect::<Vec<String>>()
    });
    let typed = Memo::new(move |_| {
        rows.with(|rows| rows.iter().filter(|row| !form.get(&row.field()).trim().is_empty()).count())
    });
    let keep = Callback::new(move |()| keep(desk, form, &rows.get_untracked()));
    let list = move || {
        if rows.with(Vec::is_empty) {
            return view! { <p class="lead">{words::nothing_to_count()}</p> };
        }
        let field = move |name: String| field(desk, form, rows, name);
        view! {
            <Cells>{each(move || found.get(), field)}</Cells>
            {move || {
                let nothing = found.with(Vec::is_empty);
                nothing.then(|| view! { <p class="note">{stock::nothing_found(&text.get())}</p> })
            }}
            <p class="note">{words::what_a_count_does()}</p>
        }
    };
    let empty = Memo::new(move |_| rows.with(Vec::is_empty));
    view! {
        <Sheet>
            <Head
                title=words::count().to_owned()
                note=Signal::derive(move || words::counted_so_far(typed.get()))
                tight=true
            />
            <Above>
                <Troubles/>
                <Read name=words::count().to_owned() below=Signal::derive(move || Some(stock::more_rows(found.read().len())))>
                    <div class="form">{move || { empty.get(); untrack(list) }}</div>
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::count_keys().to_owned() kind=HandKind::Dense>
                    <Field
                        id="find-count"
                        class="found"
                        label=stock::find().to_owned()
                        hint=stock::find().to_owned()
                        typing=Typing::Search
                        value=text
                        on_input=Callback::new(move |typed| text.set(typed))
                    />
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key
                            class="wide"
                            label=Signal::derive(move || words::keep_count(typed.get()))
                            kind=KeyKind::Filled
                            on_tap=keep
                        />
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn field(desk: Desk, form: Form, rows: Memo<Vec<Row>>, name: String) -> AnyView {
    let of = name.clone();
    let row = Memo::new(move |_| rows.with(|rows| rows.iter().find(|row| row.field() == of).cloned()));
    let of = name.clone();
    let adds = move || {
        let (row, typed) = (row.get()?, form.get(&of));
        let counted = read(&row.thing, &typed).ok()?;
        let by = desk.books(|books, _| books.count_differs(row.thing.source, counted))?;
        Some(if by.is_zero() {
            words::as_the_books_say().to_owned()
        } else {
            words::differs(&desk.read(|view| row.thing.amount_short(view.tongue, by)))
        })
    };
    let set = name.clone();
    view! {
        <Field
            id=name.clone()
            class="whole"
            label=Signal::derive(move || row.get().map(|row| row.label).unwrap_or_default())
            typing=Typing::Decimal
            value=form.signal_of(name.clone())
            adds=Signal::derive(adds)
            unit=Signal::derive(move || row.get().map(|row| units::short(row.thing.unit).to_owned()).filter(|it| !it.is_empty()))
            error=form.error_of(name.clone())
            on_input=Callback::new(move |text: String| form.set(&set, text))
        />
    }
}

/// Items and lots by themselves that are kept, by name; what lies there before what does not.
fn rows(books: &Books, view: &View) -> Vec<Row> {
    let things = thing::all(view.shop).into_iter().filter(|thing| offers_stock(view.shop, thing.source));
    let mut rows: Vec<Row> = things
        .filter_map(|thing| {
            let line = books.shelf_line(thing.source)?;
            let left = if thing.origin == Some(Origin::Salvaged) { Some(line.sorted) } else { line.quantity };
            // A lot of which nothing is left was found empty, or is all drawn.
            if thing.origin.is_some() && left.is_none_or(|left| left.is_zero()) {
                return None;
            }
            let says =
                left.map_or_else(|| words::some().to_owned(), |left| thing.amount_short(view.tongue, left));
            let label = words::by_the_books(&thing.name, &says);
            Some(Row { thing, left, label })
        })
        .collect();
    let none = |row: &Row| row.left.is_none_or(|left| left.is_zero());
    rows.order_by(|a, b| (none(a), small(&a.thing.name)).cmp(&(none(b), small(&b.thing.name))));
    rows
}

/// As typed, in the unit of the stock.
fn read(thing: &Thing, text: &str) -> Result<Quantity, benchslate_core::measure::Refusal> {
    let hint = marks::Hint { unit: Some(thing.unit), gallons: first_amount::gallons() };
    marks::quantity(text, hint)?.in_unit(thing.unit)
}

/// Everything that is typed; a field that is wrong holds back none of the others.
fn keep(desk: Desk, form: Form, rows: &[Row]) {
    form.all_right();
    let mut counted: Vec<(Id, Row, Quantity)> = Vec::new();
    for row in rows {
        let field = row.field();
        if let Some(many) = form.read(&field, |text| read(&row.thing, text)) {
            counted.push((desk.fresh(), row.clone(), many));
        }
    }
    if form.is_wrong() {
        return shop::to_the_wrong();
    }
    let Some((_, first, _)) = counted.first() else {
        if let Some(row) = rows.first() {
            form.wrong(&row.field(), words::count_one().to_owned());
        }
        return shop::to_the_wrong();
    };
    let first = first.clone();
    let entries: Vec<Id> = counted.iter().map(|(entry, ..)| *entry).collect();
    let more = counted.len().saturating_sub(1);
    let many = counted.first().map(|it| it.2).unwrap_or_default();
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            let looks = counted.iter().map(|(entry, row, many)| {
                let (of, unit) = (row.thing.source, row.thing.unit);
                Change::write(*entry, Shelf::of(on, of, ShelfState::Counted, Dec::from(*many), unit))
            });
            looks.collect()
        },
        move |after| marked(after, &first, many, more, &entries),
        move |done| {
            if done.is_ok() {
                form.done(desk);
            }
        },
    );
}

fn marked(after: &After, first: &Row, many: Quantity, more: usize, entries: &[Id]) -> Marked {
    let what = crate::words::journal::comma(&first.thing.name, &first.thing.amount_short(after.tongue, many));
    let differences = after.books().written_off_by_all(entries);
    let second = match differences {
        Some(figure) => words::differences_come_to(&after.tongue.money(figure)),
        None => words::no_difference().to_owned(),
    };
    let kind = words::look(ShelfState::Counted).to_owned();
    Mark { kind, what: words::counted_and_more(&what, more), second: Some(second) }.into()
}
