//! The fields of a new lot: only those that its origin and use ask for.

use super::{
    super::{
        finds,
        form::{Cell, Form},
        tax, usable,
    },
    plan::{self, Reader},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome, RowLink},
        field::Cells,
        seg::{Choice, Seg, SegKind},
        sum_row::{Group, Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::{abroad, cautions, first_amount, journal::correct::trip},
    shell::{Desk, Place, desk::View},
    words::{cautions as caution_words, finds as find_words, gaps, lots as words, receipts, units},
};
use benchslate_core::{
    costing::Gap,
    journal::{
        Id,
        cautions::{self as core_cautions, Caution},
        kinds::{Bearer, Origin, SettingKey, Source, SuppliedBy, Use},
    },
    measure::{Quantity, Unit},
    timing::bench,
};

/// All of them.
pub fn fields(desk: Desk, form: Form, origin: Origin, purpose: Use) -> AnyView {
    let timber = purpose == Use::Timber;
    view! {
        {form.of.map(|of| line_of(desk, of))}
        {(origin == Origin::Supplied).then(|| by(form))}
        {name(desk, form, purpose)}
        <Cells>
            {came(desk, form, origin, purpose)}
            {money(desk, form, origin, purpose)}
            {Cell::words(plan::DAY, words::day()).hint(words::day_hint()).draw(form)}
        </Cells>
        {(origin == Origin::Salvaged).then(|| tax_comes_to(desk, form))}
        {first_amount::offer(desk)}
        {matches!(origin, Origin::Salvaged | Origin::Bought).then(|| abroad::fields(form))}
        {(origin == Origin::Salvaged).then(|| km_rate(desk, form))}
        {(origin == Origin::Salvaged).then(|| drive(desk, form))}
        {move || comes_to(desk, form)}
        {(origin == Origin::Salvaged && timber).then(|| finds::worth::worth(desk, form))}
        {matches!(origin, Origin::Salvaged | Origin::Bought).then(|| tax_back(desk, form))}
        {(purpose == Use::Consumable).then(|| finish(desk, form))}
        {timber.then(|| got_for(desk, form))}
        {timber.then(|| by_size(desk, form, origin))}
        {(origin == Origin::Salvaged && timber).then(|| mark(form))}
        {(purpose == Use::Consumable).then(|| cautions::once(of_typed(desk, form)))}
    }
}

fn name(desk: Desk, form: Form, purpose: Use) -> AnyView {
    let timber = purpose == Use::Timber;
    let cell = if timber {
        Cell::words(plan::NAME, words::what()).hint(words::what_hint())
    } else {
        Cell::words(plan::NAME, words::what_item()).hint(words::item_hint())
    };
    let found = move || {
        let text = form.get(plan::NAME);
        if text.trim().is_empty() {
            return ().draw();
        }
        let found = desk.read(|view| plan::items_found(view, purpose, &text));
        let known = known(desk, form);
        let note = known.is_some().then(|| view! { <p class="note">{words::adds_to_it()}</p> });
        let row = move |(_, name): (Id, String)| {
            let text = SumText {
                label: name.clone(),
                working: Some(words::on_the_shelf_already().to_owned()),
                ..SumText::default()
            };
            let tap = move |()| form.set(plan::NAME, name.clone());
            view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
        };
        view! { {note}{found.into_iter().map(row).collect::<Vec<_>>()} }
    };
    view! { <Cells>{cell.whole().draw(form)}</Cells>{found} }
}

/// Which receipt it is a line of, and what that has still to say.
pub fn line_of(desk: Desk, of: Id) -> AnyView {
    (move || {
        desk.read(|view| {
            let receipt = view.shop.receipts.get(&of)?;
            let from = receipt.whence.as_deref();
            let label = from.map_or_else(|| receipts::line_of().to_owned(), receipts::receipt_from);
            let end = crate::screens::receipts::still_to_say(view, of);
            Some(view! { <RowLink label end=end.unwrap_or_default() leads=Leads::To(Place::Receipt(Some(of)).href())/> })
        })
    })
    .draw()
}

/// Who supplied it.
fn by(form: Form) -> AnyView {
    let choices = vec![Choice::plain(words::a_sponsor()), Choice::plain(words::the_client())];
    let choose = move |at: usize| form.set(plan::BY, if at == 1 { "1" } else { "" });
    let client = move || {
        (plan::by(form) == SuppliedBy::Client).then(|| view! { <p class="note">{words::clients_note()}</p> })
    };
    view! {
        <Seg
            name=words::supplied_by().to_owned()
            kind=SegKind::Modes
            choices=Signal::stored(choices)
            chosen=Signal::derive(move || usize::from(plan::on(form, plan::BY)))
            on_choose=Callback::new(choose)
        />
        {client}
    }
}

fn tax_comes_to(desk: Desk, form: Form) -> AnyView {
    tax::note(desk, tax_typed(desk, form), form.signal(plan::PAID))
}

fn known(desk: Desk, form: Form) -> Option<Id> {
    desk.read(|view| reader(view, desk, form, false).known())
}

/// A reader that says nothing.
pub fn reader<'a>(view: &'a View<'a>, desk: Desk, form: Form, loud: bool) -> Reader<'a> {
    Reader {
        view,
        form,
        loud,
        now: desk.at_tap(),
        ids: [Id::of([0xfd; 16]), Id::of([0xfe; 16]), Id::of([0xff; 16])],
    }
}

fn came(desk: Desk, form: Form, origin: Origin, purpose: Use) -> AnyView {
    let salvaged = origin == Origin::Salvaged;
    let label = if salvaged { words::rough() } else { words::quantity() };
    let hint = if purpose == Use::Timber { words::rough_hint() } else { words::packs_hint() };
    let unit = Signal::derive(move || {
        let unit = desk.read(|view| {
            let reader = reader(view, desk, form, false);
            reader.bare_unit(reader.known())
        });
        let text = form.get(plan::ROUGH);
        let bare = text.trim().chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' '));
        (bare && unit != Unit::Each).then(|| units::short(unit).to_owned())
    });
    let rough = Cell::words(plan::ROUGH, label).hint(hint).unit(unit).draw(form);
    if purpose == Use::Timber {
        return rough;
    }
    let is_new = Memo::new(move |_| known(desk, form).is_none());
    let of_item = move || {
        is_new.get().then(|| {
            let tin = (purpose == Use::Consumable)
                .then(|| Cell::words(plan::TIN, words::tin()).hint(words::tin_hint()).draw(form));
            let finish = (purpose == Use::Consumable)
                .then(|| Cell::words(plan::COVERS, words::covers()).hint(words::covers_hint()).draw(form));
            view! { {tin}{Cell::words(plan::LOW, words::low()).draw(form)}{finish} }
        })
    };
    view! { {rough}{of_item} }
}

fn money(desk: Desk, form: Form, origin: Origin, purpose: Use) -> AnyView {
    let in_money = first_amount::beside(desk);
    let amount = move |field, label| Cell::number(field, label).unit(in_money);
    match origin {
        Origin::Offcut => Cell::words(plan::WHENCE, words::whence()).draw(form),
        Origin::Supplied => view! {
            // A client's own goods: how many, and no money anywhere.
            {move || (plan::by(form) == SuppliedBy::Sponsor).then(|| amount(plan::PAID, words::worth()).draw(form))}
            {Cell::words(plan::WHENCE, words::whence()).draw(form)}
        },
        Origin::Bought if form.of.is_some() => amount(plan::PAID, words::price()).draw(form),
        Origin::Bought => view! {
            {amount(plan::PAID, words::price()).draw(form)}
            {Cell::words(plan::TAX, words::tax()).hint(words::tax_hint()).offers(tax::offer(desk)).draw(form)}
            {Cell::words(plan::WHENCE, words::whence()).draw(form)}
            {tax_comes_to(desk, form)}
        },
        Origin::Salvaged => {
            let new = Signal::derive(move || words::same_new(&one(desk, form)));
            view! {
                {amount(plan::PAID, words::paid()).hint(words::paid_hint()).draw(form)}
                {Cell::number(plan::KM, words::haul()).of("km").draw(form)}
                {usable::cell(desk, form, plan::YIELD, words::usable())}
                {amount(plan::NEW, "").label(new).draw(form)}
                {amount(plan::FEE, words::fee()).draw(form)}
                {Cell::number(plan::WASTE, words::waste()).of("%").draw(form)}
                {Cell::number(plan::NEW_TAX, words::new_tax()).of("%").draw(form)}
                {Cell::words(plan::TAX, words::tax()).hint(words::tax_hint()).draw(form)}
                {Cell::words(plan::WHENCE, words::whence()).draw(form)}
                {(purpose == Use::Timber).then(|| Cell::words(plan::SPECIES, find_words::species()).draw(form))}
            }
        }
    }
}

/// What one is called: `a bd ft`.
fn one(desk: Desk, form: Form) -> String {
    desk.read(|view| {
        let reader = reader(view, desk, form, false);
        let plan = reader.plan();
        let unit = plan.as_ref().map_or_else(|| reader.bare_unit(reader.known()), |plan| plan.lot.1.unit);
        let word = plan.and_then(|plan| plan.item?.1.word);
        units::each_one(unit, word.as_deref())
    })
}

fn km_rate(desk: Desk, form: Form) -> AnyView {
    let missing = move || {
        let typed = !form.get(plan::KM).trim().is_empty();
        typed && desk.read(|view| view.shop.settings.latest(SettingKey::KmRate).is_none())
    };
    (move || {
        missing().then(|| {
            view! {
                <RowLink
                    label=words::no_km_rate().to_owned()
                    end=words::add_it().to_owned()
                    leads=Leads::To(Place::Choices.href())
                />
            }
        })
    })
    .draw()
}

/// Who shares the drive, once there is one.
fn drive(desk: Desk, form: Form) -> AnyView {
    let there = Memo::new(move |_| !form.get(plan::KM).trim().is_empty());
    (move || there.get().then(|| trip::draw_with_lot(desk, form))).draw()
}

/// What one comes to, worked out as if the lot were kept.
fn comes_to(desk: Desk, form: Form) -> AnyView {
    let now = desk.minute();
    let text = desk.read(|view| {
        let plan = reader(view, desk, form, false).plan()?;
        plan.lot.1.paid.or(plan.lot.1.value).filter(|_| plan.lot.1.origin != Origin::Offcut)?;
        let with = view.shop.with(&plan.entries());
        let books = benchslate_core::costing::Books::close(&with, now);
        let cost = books.known_unit_cost(Source::Lot(plan.lot.0));
        let salvaged = plan.lot.1.origin == Origin::Salvaged;
        let word = plan.item.as_ref().and_then(|(_, item)| item.word.as_deref());
        Some(AnswerText {
            label: words::one_comes_to(&units::each_one(plan.lot.1.unit, word)),
            note: Some(if salvaged { words::before_hours() } else { words::as_it_came() }.to_owned()),
            lacks: cost.is_err(),
            figure: match cost {
                Ok(cost) => view.tongue.money(cost.rounded()),
                Err(None | Some(Gap::NoYield { .. })) => words::yield_missing().to_owned(),
                Err(Some(gap)) => gaps::short(&gap).to_owned(),
            },
        })
    });
    text.map(|text| view! { <Outcome text/> }).draw()
}

fn tax_typed(desk: Desk, form: Form) -> Signal<String> {
    Signal::derive(move || {
        desk.read(|view| {
            let priced = !form.get(plan::PAID).trim().is_empty();
            plan::tax_text(view, form, priced)
        })
    })
}

fn tax_back(desk: Desk, form: Form) -> AnyView {
    let tax = tax_typed(desk, form);
    let typed = move || !tax.get().trim().is_empty();
    (move || {
        typed().then(|| switch(form, plan::TAX_BACK, words::tax_back().to_owned(), words::tax_back_note()))
    })
    .draw()
}

/// For the build that the bench works for.
fn got_for(desk: Desk, form: Form) -> AnyView {
    let receipts = move || {
        let of = form.of?;
        desk.read(|view| view.shop.receipts.get(&of).map(|receipt| receipt.bearer))
    };
    let build =
        Memo::new(move |_| match receipts().or_else(|| desk.bench().and_then(|bench| bench.bearer)) {
            Some(Bearer::Build(build)) => {
                desk.read(|view| bench::title(view.shop, Bearer::Build(build))).map(|title| (build, title))
            }
            Some(Bearer::Lot(_) | Bearer::Shop) | None => None,
        });
    (move || {
        build.get().map(|(build, title)| {
            let code = build.to_string();
            let on = code.clone();
            let ticked = Signal::derive(move || desk.read(|view| plan::for_code(view, form)) == on);
            let tap = move |()| {
                // Not empty: a line of a receipt would then be for what the receipt was for.
                let to = if untrack(|| ticked.get()) { "none".to_owned() } else { code.clone() };
                form.set(plan::FOR, to);
            };
            view! {
                <TickRow
                    label=words::got_for(&title)
                    note=words::got_for_note().to_owned()
                    ticked
                    on_tap=Callback::new(tap)
                />
            }
        })
    })
    .draw()
}

fn switch(form: Form, field: &'static str, label: String, note: &'static str) -> AnyView {
    let tap = move |()| {
        let to = if untrack(|| plan::on(form, field)) { "" } else { "1" };
        form.set(field, to);
    };
    view! {
        <TickRow
            label
            note=note.to_owned()
            ticked=Signal::derive(move || plan::on(form, field))
            on_tap=Callback::new(tap)
        />
    }
}

/// How a new finish dries, and whether it is stated for food.
fn finish(desk: Desk, form: Form) -> AnyView {
    let is_new = Memo::new(move |_| known(desk, form).is_none());
    (move || {
        is_new.get().then(|| {
            view! {
                {switch(form, plan::OXIDISES, words::oxidises().to_owned(), words::oxidises_note())}
                {switch(form, plan::FOOD_SAFE, words::food_safe().to_owned(), words::food_safe_note())}
            }
        })
    })
    .draw()
}

fn by_size(desk: Desk, form: Form, origin: Origin) -> AnyView {
    let inches = desk.now_read(first_amount::in_inches);
    let (section, length) = if inches { ("in", "ft") } else { ("mm", "m") };
    let choices = vec![Choice::plain(words::as_it_is()), Choice::plain(words::as_sold())];
    let chosen = Signal::derive(move || usize::from(plan::on(form, plan::SOLD)));
    let choose = move |at: usize| form.set(plan::SOLD, if at == 1 { "1" } else { "" });
    let sold = inches.then(|| {
        view! {
            <Seg
                name=words::sizes_are().to_owned()
                kind=SegKind::Modes
                choices=Signal::stored(choices)
                chosen
                on_choose=Callback::new(choose)
            />
        }
    });
    one_or_the_other(form);
    view! {
        <Group title=words::by_size().to_owned()/>
        {sold}
        <Cells>
            {Cell::words(plan::THICK, words::thick()).of(section).draw(form)}
            {Cell::words(plan::WIDE, words::wide()).of(section).draw(form)}
            {Cell::words(plan::LONG, words::long()).of(length).draw(form)}
            {Cell::number(plan::BOARDS, words::boards()).draw(form)}
        </Cells>
        {move || both_measures(desk, form)}
        {(origin == Origin::Salvaged && inches)
            .then(|| switch(form, plan::NEW_NOMINAL, words::new_nominal().to_owned(), words::new_nominal_note()))}
    }
}

/// How much came is said in one way or in the other: what was wrong with the one is over once the other is typed in.
fn one_or_the_other(form: Form) {
    const SIZES: [&str; 4] = [plan::THICK, plan::WIDE, plan::LONG, plan::BOARDS];
    Effect::new(move || {
        let _ = SIZES.map(|size| form.get(size));
        form.right(plan::ROUGH);
    });
    Effect::new(move || {
        let _ = form.get(plan::ROUGH);
        SIZES.iter().for_each(|size| form.right(size));
    });
}

/// Wood that is there, and what it is sold as: never mixed.
fn both_measures(desk: Desk, form: Form) -> AnyView {
    let text = desk.read(|view| {
        let plan = reader(view, desk, form, false).plan()?;
        let lot = plan.lot.1;
        let basis = lot.basis?;
        let amount = |quantity: Quantity| units::amount_short(view.tongue, quantity, lot.unit, None);
        let rough = amount(lot.rough.quantity()?);
        let other = lot.other_measure.and_then(|it| it.quantity()).map(amount);
        let (label, note) = match basis {
            benchslate_core::journal::kinds::Basis::Actual => {
                (words::of_wood(&rough), other.map(|it| words::nominal(&it)))
            }
            benchslate_core::journal::kinds::Basis::Nominal => {
                (words::nominal(&rough), other.map(|it| words::of_wood(&it)))
            }
        };
        Some(AnswerText { label, note, ..AnswerText::default() })
    });
    text.map(|text| view! { <Outcome text/> }).draw()
}

/// The treatment mark of old packaging, and what it and old timber ask to be minded.
fn mark(form: Form) -> AnyView {
    let choices: Vec<Choice> =
        plan::MARKS.iter().map(|mark| Choice::plain(caution_words::of_mark(*mark))).collect();
    let chosen = Signal::derive(move || form.get(plan::MARK).parse::<usize>().unwrap_or(usize::MAX));
    let choose = move |at: usize| form.set(plan::MARK, at.to_string());
    let list = Signal::derive(move || core_cautions::coming_in(plan::mark(form)));
    view! {
        <Group title=caution_words::mark().to_owned()/>
        <Seg
            name=caution_words::mark().to_owned()
            kind=SegKind::Modes
            class="under-group"
            choices=Signal::stored(choices)
            chosen
            on_choose=Callback::new(choose)
        />
        {cautions::once(list)}
    }
}

/// What goes with what is typed.
fn of_typed(desk: Desk, form: Form) -> Signal<Vec<Caution>> {
    let list = Memo::new(move |_| {
        desk.read(|view| {
            let plan = reader(view, desk, form, false).plan()?;
            let with = view.shop.with(&plan.entries());
            Some(core_cautions::of_source(&with, Source::Lot(plan.lot.0)))
        })
        .unwrap_or_default()
    });
    Signal::derive(move || list.get())
}
