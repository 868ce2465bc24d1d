//! A find, while it is looked at: boards and their size, what is asked, how it may go; worth it or not at once.

use super::{
    super::{
        form::{Cell, Form},
        new_lot::{
            fields::reader,
            plan::{self, Plan},
        },
    },
    home, pad, worth,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Cells,
        key::{Key, KeyKind},
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Group,
    },
    screens::{cautions, first_amount},
    shell::{Desk, Go, Place, desk::Mark, frame::Places},
    words::{common, finds as words, lots, money, units},
};
use benchslate_core::{
    journal::{Change, Id, cautions as core_cautions, kinds::Find},
    measure::number,
};

/// Sides of a board: the rule stands under them.
const SIDES: &[&str] = &[plan::THICK, plan::WIDE, plan::LONG];

/// Which of the three ways is on view.
const SHOWN: &str = "case-shown";

/// The form.
#[component]
pub fn NewFindSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "find");
    let current = RwSignal::new(plan::BOARDS);
    let keep_it = move |()| keep(desk, go, form);
    let take = move |()| keep_and(desk, go, form);
    view! {
        <Sheet>
            <Head title=words::find().to_owned() note=words::not_home().to_owned() tight=true/>
            <Above>
                <Read name=words::find().to_owned() below=words::more_fields().to_owned()>
                    {fields(desk, form, current)}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned() kind=HandKind::Tall>
                    {pad::keys(desk, form, current, SIDES)}
                    <Keys>
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key label=words::keep().to_owned() on_tap=Callback::new(keep_it)/>
                        <Key class="wide" label=words::take_it_home().to_owned() kind=KeyKind::Filled on_tap=Callback::new(take)/>
                    </Keys>
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn fields(desk: Desk, form: Form, current: RwSignal<&'static str>) -> AnyView {
    super::super::pad::focus(plan::BOARDS);
    let inches = desk.now_read(first_amount::in_inches);
    let (section, long) = if inches { ("in", "ft") } else { ("mm", "m") };
    let side = move |field, label, unit| Cell::words(field, label).of(unit).padded(current).draw(form);
    let in_money = first_amount::beside(desk);
    let amount = move |field, label| Cell::number(field, label).unit(in_money).padded(current).draw(form);
    let new = Signal::derive(move || lots::same_new(&one(desk, form)));
    view! {
        <Cells>
            {Cell::words(plan::NAME, words::what()).whole().draw(form)}
            {Cell::number(plan::BOARDS, lots::boards()).padded(current).draw(form)}
            {side(plan::THICK, lots::thick(), section)}
            {side(plan::WIDE, lots::wide(), section)}
            {side(plan::LONG, lots::long(), long)}
            {amount(plan::PAID, words::asked())}
            {Cell::number(plan::KM, lots::haul()).of("km").padded(current).draw(form)}
            {Cell::number(plan::NEW, "").label(new).unit(in_money).padded(current).draw(form)}
            {Cell::number(plan::WASTE, lots::waste()).of("%").padded(current).draw(form)}
        </Cells>
        {first_amount::offer(desk)}
        {worth::worth(desk, form)}
        {cases(desk, form, current)}
        <Cells>
            {Cell::words(plan::WHENCE, lots::whence()).draw(form)}
            {Cell::words(plan::SPECIES, words::species()).draw(form)}
            {Cell::words(plan::ROUGH, words::or_in_all()).hint(lots::rough_hint()).draw(form)}
            {amount(plan::FEE, lots::fee())}
            {Cell::number(plan::NEW_TAX, lots::new_tax()).of("%").padded(current).draw(form)}
        </Cells>
        {cautions::once_of(core_cautions::coming_in(None))}
    }
}

/// What one is called: `a bd ft`.
fn one(desk: Desk, form: Form) -> String {
    desk.read(|view| {
        let reader = reader(view, desk, form, false);
        let unit = reader.plan_unnamed().map_or_else(|| reader.bare_unit(None), |plan| plan.lot.1.unit);
        units::each_one(unit, None)
    })
}

/// How it may go: one way at a time, what is offered standing in until something else is typed.
fn cases(desk: Desk, form: Form, current: RwSignal<&'static str>) -> AnyView {
    let shown = Memo::new(move |_| form.get(SHOWN).parse::<usize>().unwrap_or(1));
    let choices = words::cases().into_iter().map(Choice::plain).collect();
    let offers = Memo::new(move |_| {
        desk.books(|books, view| {
            let ways = worth::ways(books, form, &worth::named(view, desk, form)?)?;
            let cases = ways.cases;
            let each = cases.map(|it| {
                [it.badly, it.usually, it.well]
                    .map(|case| [view.tongue.number(&case.usable.hundredths()), case.minutes.to_string()])
            });
            Some((each, worth::comes_from(view, &ways)))
        })
    });
    let two = move || {
        let at = shown.get();
        let [share, minutes] = worth::CASES.get(at).copied().unwrap_or_default();
        let offered = move |which: usize| {
            Signal::derive(move || {
                let (each, _) = offers.get()?;
                each?.get(at)?.get(which).cloned()
            })
        };
        let label = Signal::derive(move || words::minutes(worth::boards(form).is_some()).to_owned());
        view! {
            <Cells>
                {Cell::number(share, words::usable()).of("%").adds(standing(form, share, offered(0))).padded(current).draw(form)}
                {Cell::number(minutes, "").label(label).of("min").adds(offered_in(form, minutes, offered(1))).padded(current).draw(form)}
            </Cells>
        }
    };
    let from = move || {
        offers.get().map(|(_, [usable, minutes])| {
            view! { <p class="note">{usable}</p><p class="note">{minutes}</p> }
        })
    };
    view! {
        <Group title=words::if_it_goes().to_owned()/>
        <Seg
            name=words::if_it_goes().to_owned()
            kind=SegKind::Modes
            choices=Signal::stored(choices)
            chosen=shown
            on_choose=Callback::new(move |at: usize| form.set(SHOWN, at.to_string()))
        />
        {two}
        {from}
    }
}

/// What is offered, in a field that is empty.
fn offered_in(form: Form, field: &'static str, offered: Signal<Option<String>>) -> Signal<Option<String>> {
    Signal::derive(move || offered.get().filter(|_| form.get(field).trim().is_empty()))
}

/// The same for a share; once something is typed, how it is read.
fn standing(form: Form, field: &'static str, offered: Signal<Option<String>>) -> Signal<Option<String>> {
    let empty = offered_in(form, field, offered);
    Signal::derive(move || match empty.get() {
        Some(offered) => Some(offered),
        None => offered.get().map(|read| lots::read_as(&read)).filter(|_| !form.get(field).trim().is_empty()),
    })
}

/// Read aloud by its fields where something is missing.
fn read(desk: Desk, form: Form) -> Option<(Find, Plan)> {
    form.all_right();
    let ids: [Id; 3] = [desk.fresh(), desk.fresh(), desk.fresh()];
    let now = desk.at_tap();
    let plan = desk.now_read(|view| untrack(|| plan::Reader { view, form, loud: true, now, ids }.plan()));
    // What can't be read is said by its field, also where another way is on view.
    form.read(plan::BOARDS, number::whole);
    for (at, [usable, minutes]) in worth::CASES.into_iter().enumerate() {
        let (share, time) = (form.read(usable, number::part), form.read(minutes, number::whole));
        let typed = [(usable, share.is_some()), (minutes, time.is_some())];
        if typed.iter().any(|(field, reads)| !reads && !form.now(field).trim().is_empty()) {
            form.set(SHOWN, at.to_string());
            break;
        }
    }
    let plan = plan.filter(|_| !form.is_wrong())?;
    if plan.has_money() && !first_amount::can_be_kept(desk) {
        form.wrong(plan::PAID, money::no_currency().to_owned());
        return None;
    }
    let find = untrack(|| desk.books(|books, _| worth::find(books, form, &plan)));
    if find.is_none() {
        form.wrong(plan::ROUGH, words::how_long().to_owned());
    }
    Some((find?, plan))
}

fn keep(desk: Desk, go: Go, form: Form) {
    let Some((find, plan)) = read(desk, form) else { return };
    let entry = desk.fresh();
    let name = find.name.clone();
    desk.act_then(
        move |hand| {
            let mut changes = if plan.has_money() { first_amount::settings(hand) } else { Vec::new() };
            changes.push(Change::write(entry, find.clone()));
            changes
        },
        move |_| Mark { kind: words::looked_at().to_owned(), what: name.clone(), second: None }.into(),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.instead(&Place::Find(entry));
            }
        },
    );
}

/// The find, the lot that it becomes and the drive that fetches it, in one act.
fn keep_and(desk: Desk, go: Go, form: Form) {
    let Some((find, plan)) = read(desk, form) else { return };
    let entry = desk.fresh();
    let money = plan.has_money();
    home::take(desk, home::Taken { entry, find, money, ids: [desk.fresh(), desk.fresh()] }, move |lot| {
        form.done(desk);
        go.instead(&Place::Lot(lot));
    });
}
