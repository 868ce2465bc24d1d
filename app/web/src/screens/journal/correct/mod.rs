//! An entry is put right: the fields of its kind, filled with what it says; what they say then is a new version.

pub use stock::covers;

mod abroad;
mod blank;
mod buying;
pub(in crate::screens) mod chosen;
mod find;
mod free;
mod income;
mod items;
mod looks;
mod paid;
mod part;
mod publishing;
mod rows;
mod shot;
mod sorted;
mod step;
mod step_rows;
mod stock;
mod things;
mod tools;
pub(in crate::screens) mod trip;

use super::super::hours::{choices, fields, one_off};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, FieldError, LongField, Typing},
        tick_row::TickRow,
    },
    screens::{
        first_amount,
        shop::comes_to,
        stock::{
            form::{Cell, Form},
            tax, usable,
        },
    },
    shell::{Desk, desk::View},
    words::{
        journal::{self as words, Label},
        lots, money, refusal,
    },
};
use benchslate_core::{
    journal::{
        Body, Id, On,
        kinds::{Bearer, CardCopied, SeriesEnd, Side, Stretch},
    },
    measure::{Dec, Unit, day, duration, marks, number},
};
pub use blank::blank;
use chosen::Choices;
use fields::Defaults;

/// A field of a form that puts right: where it is kept, its label, how it is typed.
type Spec = (&'static str, Label, How);

/// How a field is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum How {
    Day,
    Words,
    Long,
    Number,
    /// In the shop's currency, which stands beside it.
    Money,
    /// Tax on top: money, or a share of what was paid.
    Tax,
    /// How much of it is expected to be usable.
    Part,
    /// With a decimal mark or a fraction, and a unit if it isn't the usual one.
    Quantity,
    /// How long, to the minute.
    Length,
    Bearer,
    /// A bearer, or none yet.
    Home,
    Build,
    /// The treatment mark of old packaging.
    Mark,
    Tick,
    /// How long something runs or lasts, in hours.
    Hours,
    /// Windows of a day; beside them what they come to.
    Free,
    /// One of these.
    OneOf(Choices),
}

/// The fields of an entry with what it says. None: it is put right elsewhere, or not at all.
pub fn fill(view: &View, body: &Body) -> Option<Vec<(String, String)>> {
    let filled = match body {
        Body::Stretch(it) => return Some(owned(fields::fill(view, it))),
        Body::Trip(it) => return Some(with_day(view, body, trip::fill(it))),
        Body::Draw(it) => stock::fill_draw(it),
        Body::Lot(it) => stock::fill_lot(it),
        Body::Item(it) => stock::fill_item(it),
        Body::Sort(it) => sorted::fill_sort(it),
        Body::Cull(it) => sorted::fill_cull(it),
        Body::Find(it) => find::fill_find(it),
        Body::Expense(it) => paid::fill_expense(it),
        Body::Note(it) => things::fill_note(it),
        Body::Drying(it) => return Some(owned(things::fill_drying(view, it))),
        Body::Photo(it) => things::fill_photo(it),
        Body::Build(it) => things::fill_build(it),
        Body::Person(it) => things::fill_person(it),
        Body::Stage(it) => things::fill_stage(it),
        Body::Tool(it) => return Some(with_day(view, body, tools::fill_tool(it))),
        Body::ToolHours(it) => tools::fill_tool_hours(it),
        Body::Blade(it) => tools::fill_blade(it),
        Body::MonthlyCost(it) => tools::fill_monthly(it),
        Body::Income(it) => return Some(with_day(view, body, income::fill_income(it))),
        Body::Made(it) => return Some(with_day(view, body, items::fill_made(it))),
        Body::HandOver(it) => items::fill_handed(it),
        Body::Film(it) => items::fill_film(it),
        Body::Step(it) => return Some(with_day(view, body, step::fill(view, it))),
        Body::Part(it) => part::fill(it),
        Body::Resource(it) => free::fill_resource(it),
        Body::FreeDay(it) => free::fill_day(view, it),
        Body::Shot(it) => shot::fill(it),
        Body::Take(it) => shot::fill_take(it),
        Body::CardCopied(_) => Vec::new(),
        Body::Chapter(it) => publishing::fill_chapter(it),
        Body::Outsider(it) => return Some(publishing::fill_outsider(it)),
        Body::Due(it) => publishing::fill_due(it),
        Body::SeriesEnd(it) => vec![("build", it.build.to_string())],
        Body::Receipt(it) => paid::fill_receipt(it),
        Body::ByProduct(it) => paid::fill_by_product(it),
        Body::Shelf(it) => looks::fill(view, it),
        Body::BuyLine(it) => buying::fill(view, it),
        Body::BuildState(_) => Vec::new(),
        Body::Setting(_) | Body::Retired(_) | Body::Same(_) => return None,
    };
    Some(with_day(view, body, owned(filled)))
}

fn owned(filled: Vec<(&'static str, String)>) -> Vec<(String, String)> {
    filled.into_iter().map(|(field, text)| (field.to_owned(), text)).collect()
}

fn with_day(view: &View, body: &Body, mut filled: Vec<(String, String)>) -> Vec<(String, String)> {
    filled.push((DAY.to_owned(), body.on().day(&view.shop.zone).to_string()));
    filled
}

/// The fields, drawn.
pub fn draw(desk: Desk, form: Form, body: &Body) -> AnyView {
    if let Body::Stretch(_) = body {
        return fields::draw(desk, form, Signal::stored(Defaults::default()), false);
    }
    if let Body::Shot(shot) = body {
        return shot::draw(desk, form, shot.build);
    }
    let (specs, side) = specs(body);
    let in_money = specs.iter().any(|(_, _, how)| *how == How::Money);
    let taxed = match body {
        Body::Expense(_) => Some("amount"),
        Body::Lot(_) => Some("paid"),
        _ => None,
    };
    // Cells hold what fits a cell; long words stand over them, boxes to tick under them.
    let (long, specs): (Vec<Spec>, Vec<Spec>) = specs.into_iter().partition(|(_, _, how)| *how == How::Long);
    let (ticks, cells): (Vec<Spec>, Vec<Spec>) = specs.into_iter().partition(|(_, _, how)| *how == How::Tick);
    let drawn = move |specs: Vec<Spec>| {
        specs.into_iter().map(move |spec| field(desk, form, spec)).collect::<Vec<AnyView>>()
    };
    view! {
        {matches!(body, Body::HandOver(_)).then(|| items::how(form))}
        {matches!(body, Body::Shelf(it) if it.quantity.is_some()).then(|| looks::states(form))}
        {drawn(long)}
        <Cells>{drawn(cells)}</Cells>
        {taxed.map(|of| tax::note(desk, form.signal("tax"), form.signal(of)))}
        {in_money.then(|| first_amount::offer(desk))}
        {under(desk, form, body)}
        {drawn(ticks)}
        {side.then(|| fields::sides(form))}
    }
}

/// What stands under the cells of a kind: rows of several alike, shares, stages.
fn under(desk: Desk, form: Form, body: &Body) -> AnyView {
    match body {
        Body::Trip(_) => trip::draw(desk, form),
        Body::Income(_) => view! { {rows::draw(desk, form, income::RECEIVED)}{trip::draw(desk, form)} },
        Body::Tool(_) => view! { {tools::runs_at(desk, form)}{rows::draw(desk, form, tools::LEFT)} },
        Body::Expense(_) => {
            let borne = Signal::derive(move || choices::bearer(&form.get("bearer")));
            one_off::tick(desk, form, borne)
        }
        Body::Made(it) => items::spoiled(desk, form, it.build),
        Body::Step(_) => step_rows::draw(desk, form),
        Body::Outsider(_) => {
            view! { {publishing::working_week(form)}{rows::draw(desk, form, publishing::OFF)} }
        }
        _ => ().draw(),
    }
}

/// Whether money stands in its fields: then what the shop counts in goes with it.
pub fn has_money(form: Form, body: &Body) -> bool {
    let typed =
        |(field, _, how): &Spec| matches!(how, How::Money | How::Tax) && !form.now(field).trim().is_empty();
    specs(body).0.iter().any(typed)
}

/// The fields of a kind, and whether the side is chosen under them.
fn specs(body: &Body) -> (Vec<Spec>, bool) {
    match body {
        Body::Draw(_) => (stock::DRAW.to_vec(), true),
        Body::Lot(it) => (stock::lot_specs(it), false),
        Body::Item(it) => (stock::item_specs(it), false),
        Body::Sort(_) => (sorted::SORT.to_vec(), false),
        Body::Cull(_) => (sorted::CULL.to_vec(), false),
        Body::Find(_) => (find::FIND.to_vec(), false),
        Body::Trip(_) => (trip::TRIP.to_vec(), false),
        Body::Expense(_) => (paid::EXPENSE.to_vec(), true),
        Body::Note(_) => (things::NOTE.to_vec(), false),
        Body::Drying(_) => (things::DRYING.to_vec(), false),
        Body::Photo(it) => (things::photo_specs(it), false),
        Body::Build(_) => (things::BUILD.to_vec(), false),
        Body::Person(_) => (things::PERSON.to_vec(), false),
        Body::Stage(_) => (things::STAGE.to_vec(), true),
        Body::Shelf(it) => (looks::specs(it), false),
        Body::BuyLine(_) => (buying::LINE.to_vec(), false),
        Body::BuildState(_) => (items::STATE.to_vec(), false),
        Body::Receipt(_) => (paid::RECEIPT.to_vec(), false),
        Body::ByProduct(_) => (paid::BY_PRODUCT.to_vec(), false),
        Body::Tool(_) => (tools::TOOL.to_vec(), false),
        Body::ToolHours(_) => (tools::TOOL_HOURS.to_vec(), false),
        Body::Blade(_) => (tools::BLADE.to_vec(), false),
        Body::MonthlyCost(_) => (tools::MONTHLY.to_vec(), false),
        Body::Income(_) => (income::INCOME.to_vec(), true),
        Body::Made(_) => (items::MADE.to_vec(), false),
        Body::HandOver(_) => (items::HANDED.to_vec(), false),
        Body::Film(_) => (items::FILM.to_vec(), false),
        Body::Step(_) => (step::SPECS.to_vec(), false),
        Body::Part(_) => (part::PART.to_vec(), false),
        Body::Resource(_) => (free::RESOURCE.to_vec(), false),
        Body::FreeDay(_) => (free::DAY_OFF.to_vec(), false),
        Body::Take(_) => (shot::TAKE.to_vec(), false),
        Body::CardCopied(_) => (vec![(DAY, Label::Day, How::Day)], false),
        Body::Shot(_) => (Vec::new(), false),
        Body::Chapter(_) => (publishing::CHAPTER.to_vec(), false),
        Body::Outsider(_) => (publishing::OUTSIDER.to_vec(), false),
        Body::Due(_) => (publishing::DUE.to_vec(), false),
        Body::SeriesEnd(_) => (items::SERIES_END.to_vec(), false),
        Body::Stretch(_) | Body::Setting(_) | Body::Retired(_) | Body::Same(_) => (Vec::new(), false),
    }
}

/// The entry as the fields say it. None: something is wrong, and said by its field.
pub fn read(desk: Desk, form: Form, entry: Id, before: &Body) -> Option<Body> {
    form.all_right();
    let body = desk.now_read(|view| {
        let typed = Typed { form, view, today: view.shop.zone.day(desk.at_tap()) };
        Some(match before {
            Body::Stretch(_) | Body::Setting(_) | Body::Retired(_) | Body::Same(_) => return None,
            Body::Receipt(it) => paid::receipt(&typed, it).into(),
            Body::ByProduct(it) => paid::by_product(&typed, it).into(),
            Body::Tool(it) => tools::tool(&typed, it).into(),
            Body::ToolHours(it) => tools::tool_hours(&typed, it).into(),
            Body::Blade(it) => tools::blade(&typed, it).into(),
            Body::MonthlyCost(it) => tools::monthly(&typed, it).into(),
            Body::Income(it) => income::income(&typed, it).into(),
            Body::Made(it) => items::made(&typed, it).into(),
            Body::HandOver(it) => items::handed(&typed, it, entry).into(),
            Body::Film(it) => items::film(&typed, it).into(),
            Body::Step(it) => step::read(&typed, it, entry).into(),
            Body::Part(it) => part::part(&typed, it).into(),
            Body::Resource(it) => free::resource(&typed, it).into(),
            Body::FreeDay(it) => free::day(&typed, it).into(),
            Body::Shot(it) => shot::shot(&typed, it).into(),
            Body::Take(it) => shot::take(&typed, it).into(),
            Body::CardCopied(it) => CardCopied { on: typed.on(it.on), ..it.clone() }.into(),
            Body::Chapter(it) => publishing::chapter(&typed, it, entry).into(),
            Body::Outsider(it) => publishing::outsider(&typed, it).into(),
            Body::Due(it) => publishing::due(&typed, it, entry).into(),
            Body::SeriesEnd(it) => {
                let build = typed.chosen("build").unwrap_or(it.build);
                SeriesEnd { on: typed.on(it.on), build }.into()
            }
            Body::BuildState(it) => {
                benchslate_core::journal::kinds::BuildState { on: typed.on(it.on), ..it.clone() }.into()
            }
            Body::Draw(it) => stock::draw(&typed, it).into(),
            Body::Lot(it) => stock::lot(&typed, it).into(),
            Body::Item(it) => stock::item(&typed, it).into(),
            Body::Sort(it) => sorted::sort(&typed, it).into(),
            Body::Cull(it) => sorted::cull(&typed, it).into(),
            Body::Find(it) => find::find(&typed, it).into(),
            Body::Trip(it) => trip::trip(&typed, it).into(),
            Body::Expense(it) => paid::expense(&typed, it).into(),
            Body::Note(it) => things::note(&typed, it).into(),
            Body::Drying(it) => things::drying(&typed, it).into(),
            Body::Photo(it) => things::photo(&typed, it).into(),
            Body::Build(it) => things::build(&typed, it, entry).into(),
            Body::Person(it) => things::person(&typed, it).into(),
            Body::Stage(it) => things::stage(&typed, it).into(),
            Body::Shelf(it) => looks::look(&typed, it).into(),
            Body::BuyLine(it) => buying::line(&typed, it).into(),
        })
    });
    if let Body::Stretch(it) = before {
        return stretch(desk, form, it).map(Body::from);
    }
    body.filter(|_| !form.is_wrong())
}

const DAY: &str = "day";

fn stretch(desk: Desk, form: Form, before: &Stretch) -> Option<Stretch> {
    let logged = fields::read(desk, form, &Defaults::default(), false)?;
    let stretch = desk.now_read(|view| logged.stretch(view.shop, Some(before)));
    if stretch.is_none() {
        form.wrong("to", words::end_before_start(form.now("from").trim()));
    }
    stretch
}

/// What is typed, read field by field; what can't be read is said by its field.
struct Typed<'a> {
    form: Form,
    view: &'a View<'a>,
    today: benchslate_core::measure::Day,
}

impl Typed<'_> {
    /// The day; with its time where it is the same day.
    fn on(&self, before: On) -> On {
        let day = fields::must(self.form, DAY, |text| day::typed_near(text, self.today));
        day.map_or(before, |day| fields::moved(self.view, before, day))
    }

    fn words(&self, field: &str, most: usize) -> String {
        let text = self.form.now(field).trim().to_owned();
        if text.chars().count() > most {
            self.form.wrong(field, words::too_long(most));
        }
        text
    }

    fn name(&self, field: &str, most: usize) -> String {
        let name = self.words(field, most);
        if name.is_empty() {
            self.form.wrong(field, words::name_missing().to_owned());
        }
        name
    }

    fn maybe_words(&self, field: &str, most: usize) -> Option<String> {
        Some(self.words(field, most)).filter(|text| !text.is_empty())
    }

    /// Money, where some is typed. It is kept only where it is known what it counts in.
    fn money(&self, field: &str) -> Option<Dec> {
        let money = self.form.read(field, number::amount).map(Dec)?;
        self.in_currency(field);
        Some(money)
    }

    fn in_currency(&self, field: &str) {
        if first_amount::currency(self.view).is_none() {
            self.form.wrong(field, money::no_currency().to_owned());
        }
    }

    /// As in the form that it was typed in first: money, or a share of what was paid.
    fn tax(&self, field: &str, amount: Option<Dec>) -> Option<Dec> {
        let tax = tax::read(self.view, &self.form.now(field), amount).unwrap_or_else(|sentence| {
            self.form.wrong(field, sentence);
            None
        })?;
        self.in_currency(field);
        Some(tax)
    }

    fn share(&self, field: &str) -> Option<Dec> {
        self.of_the_whole(field, self.form.read(field, number::percent).map(Dec))
    }

    fn part(&self, field: &str) -> Option<Dec> {
        self.of_the_whole(field, self.form.read(field, number::part).map(Dec))
    }

    fn of_the_whole(&self, field: &str, read: Option<Dec>) -> Option<Dec> {
        let share = read?;
        if Dec::parse("1").is_ok_and(|whole| share > whole) {
            self.form.wrong(field, words::over_the_whole().to_owned());
        }
        Some(share)
    }

    fn must_money(&self, field: &str) -> Dec {
        match self.money(field) {
            Some(money) => money,
            None => self.number(field),
        }
    }

    fn number(&self, field: &str) -> Dec {
        fields::must(self.form, field, number::amount).map(Dec).unwrap_or_default()
    }

    /// In this unit, whatever it was typed in.
    fn quantity(&self, field: &str, unit: Unit) -> Dec {
        let hint = marks::Hint { unit: Some(unit), gallons: first_amount::gallons() };
        let read = |text: &str| marks::quantity(text, hint)?.in_unit(unit);
        fields::must(self.form, field, read).map(Dec::from).unwrap_or_default()
    }

    fn bearer(&self, field: &str) -> Option<Bearer> {
        choices::bearer(&self.form.now(field))
    }

    fn side(&self) -> Side {
        fields::side_of(&self.form.now("side")).unwrap_or(Side::Piece)
    }

    fn ticked(&self, field: &str) -> bool {
        self.form.now(field) == TICKED
    }

    fn whole(&self, field: &str) -> u32 {
        fields::must(self.form, field, number::whole).unwrap_or_default()
    }

    fn id(&self, field: &str) -> Option<Id> {
        Id::parse(&self.form.now(field))
    }

    /// As [`Typed::id`], where one must be chosen.
    fn chosen(&self, field: &str) -> Option<Id> {
        let id = self.id(field);
        if id.is_none() {
            self.form.wrong(field, words::not_chosen().to_owned());
        }
        id
    }

    /// A day, where one is typed.
    fn day(&self, field: &str) -> Option<benchslate_core::measure::Day> {
        self.form.read(field, |text| day::typed_near(text, self.today))
    }

    /// Hours, where some are typed: more than none.
    fn hours(&self, field: &str) -> Option<Dec> {
        let hours = self.form.read(field, duration::hours)?;
        if hours.is_zero() {
            self.form.wrong(field, words::more_than_none().to_owned());
        }
        Some(Dec::from(hours.in_hours()))
    }

    fn must_hours(&self, field: &str) -> Dec {
        match self.hours(field) {
            Some(hours) => hours,
            None => fields::must(self.form, field, duration::hours)
                .map(|hours| Dec::from(hours.in_hours()))
                .unwrap_or_default(),
        }
    }

    fn wrong(&self, field: &str, refusal: &benchslate_core::measure::Refusal) {
        self.form.wrong(field, refusal::sentence(refusal));
    }
}

/// What a form keeps for a box that is ticked.
const TICKED: &str = "1";

fn tick(ticked: bool) -> String {
    if ticked { TICKED.to_owned() } else { String::new() }
}

/// What must be there.
fn given(stored: Dec) -> String {
    stored.plain()
}

fn day_code(day: Option<benchslate_core::measure::Day>) -> String {
    day.map(|day| day.to_string()).unwrap_or_default()
}

fn dec(stored: Option<Dec>) -> String {
    stored.map(Dec::plain).unwrap_or_default()
}

fn hundredths(stored: Option<Dec>) -> String {
    stored.map(Dec::hundredths).unwrap_or_default()
}

fn field(desk: Desk, form: Form, (name, label, how): Spec) -> AnyView {
    let text = words::label(label);
    let choice = |of: fn(&View, &str) -> Vec<crate::parts::pick::Choosable>| {
        let choosing = fields::Choosing { field: name, label: text, class: "whole", of };
        fields::choice(desk, form, choosing, Signal::stored(String::new()))
    };
    match how {
        How::Day => fields::typed(form, name, text, "", "", Typing::Date),
        How::Words | How::Quantity | How::Length => fields::text(form, name, text, "", ""),
        How::Number => fields::typed(form, name, text, "", "", Typing::Decimal),
        How::Hours => Cell::words(name, text).of("h").draw(form),
        How::Free => Cell::words(name, text).adds(comes_to(desk, form, name)).whole().draw(form),
        How::OneOf(one) => choice(one.of()),
        How::Money => Cell::number(name, text).unit(first_amount::beside(desk)).draw(form),
        How::Part => usable::cell(desk, form, name, text),
        How::Tax => Cell::words(name, text).hint(lots::tax_hint()).draw(form),
        How::Bearer => choice(choices::bearers),
        How::Home => choice(choices::homes),
        How::Build => choice(choices::builds),
        How::Mark => choice(choices::marks),
        How::Long => view! {
            <LongField
                id=name
                label=text.to_owned()
                value=form.signal(name)
                error=form.error(name)
                on_input=Callback::new(move |text: String| form.set(name, text))
            />
        },
        How::Tick => view! {
            <TickRow
                label=text.to_owned()
                ticked=Signal::derive(move || form.get(name) == TICKED)
                on_tap=Callback::new(move |()| form.set(name, tick(form.now(name) != TICKED)))
            />
            <FieldError id=format!("{name}-error") error=form.error(name)/>
        },
    }
}
