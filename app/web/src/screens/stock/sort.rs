//! What a salvaged lot yielded: today's good and culled cut off the board; yield and usable at once.

use super::{
    form::{Cell, Form},
    pad,
    thing::{self, Thing},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        board::{Board, BoardPart, Cut},
        field::Cells,
        hatch::Hatch,
        key::{Key, KeyKind},
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumRow, SumText},
        tick_row::TickRow,
    },
    screens::{
        cautions,
        form_keys::leave_key,
        journal::correct::chosen::{self, LINKS},
    },
    shell::{
        Desk, Go, Place,
        desk::{Mark, Phase, View},
        frame::Places,
    },
    words::{common, journal, stock as words},
};
use benchslate_core::measure::InOrder;
use benchslate_core::{
    costing::{Books, salvage},
    journal::{
        Body, Change, Id, On, Shop, cautions as core_cautions,
        kinds::{Cull, Link, Origin, Sort},
    },
    measure::{Quantity, Ratio, marks},
};

const GOOD: &str = "sort-good";
const CULLED: &str = "sort-culled";
const LINK: &str = "sort-link";
const UNEXPECTED: &str = "sort-unexpected";

/// Salvaged lots of their own, not found empty, latest first.
pub fn waiting(shop: &Shop) -> Vec<Id> {
    let empty = |id: Id| {
        shop.looks.iter().any(|it| it.is_empty() && it.of == benchslate_core::journal::kinds::Source::Lot(id))
    };
    let mut lots: Vec<_> = shop
        .lots
        .iter()
        .filter(|(id, lot)| {
            lot.origin == Origin::Salvaged && lot.item.is_none() && !empty(**id) && shop.offers(**id)
        })
        .map(|(id, lot)| (lot.order, *id))
        .collect();
    lots.order_by(|a, b| b.cmp(a));
    lots.into_iter().map(|(_, id)| id).collect()
}

/// The sheet of a sorting.
#[component]
pub fn SortSheet(lot: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "sort");
    let current = RwSignal::new(GOOD);
    let chooses = RwSignal::new(false);
    let name = Memo::new(move |_| desk.read(|view| Thing::of(view.shop, lot).map(|thing| thing.name)));
    let looks = Memo::new(move |_| look(desk, lot, form));
    let keep = Callback::new(move |()| keep(desk, go, lot, form));
    // Until the journal is read there may well be such a lot.
    let gone = Memo::new(move |_| desk.phase.get() == Phase::Ready && name.with(Option::is_none));
    let title = move || match name.get() {
        Some(name) => words::sort_title(&name),
        None if gone.get() => words::not_there().to_owned(),
        None => String::new(),
    };
    view! {
        <Sheet>
            <Head title=Signal::derive(title) tight=true on_tap=Callback::new(move |()| chooses.set(true))/>
            <Above>
                <Read name=Signal::derive(title)>
                    {move || if chooses.get() {
                            others(desk, go, chooses)
                        } else if gone.get() {
                            view! { <p class="note">{words::not_there()}</p> }
                        } else {
                            body(desk, lot, looks, form, current)
                        }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::shelf_keys().to_owned() kind=HandKind::Tall>
                    {move || if gone.get() { leave_key(go) } else { keys(desk, go, form, current, keep) }}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn keys(desk: Desk, go: Go, form: Form, current: RwSignal<&'static str>, keep: Callback<()>) -> AnyView {
    view! {
        {pad::figures(desk, form, current)}
        <Keys>
            <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
            <Key class="wide" label=words::keep_the_sort().to_owned() kind=KeyKind::Filled on_tap=keep/>
        </Keys>
    }
}

/// Other lots that wait to be sorted.
fn others(desk: Desk, go: Go, chooses: RwSignal<bool>) -> AnyView {
    let lots = desk.read(|view| {
        let named = |id| Some((id, Thing::of(view.shop, id)?.name));
        waiting(view.shop).into_iter().filter_map(named).collect::<Vec<(Id, String)>>()
    });
    let row = move |(id, name): (Id, String)| {
        let text = SumText { label: name, ..SumText::default() };
        let tap = move |()| {
            chooses.set(false);
            go.instead(&Place::Sort(id));
        };
        view! { <SumRow text leads=Leads::Tap(Callback::new(tap)) signed=false/> }
    };
    let none = lots.is_empty().then(|| view! { <p class="note">{words::nothing_to_sort()}</p> });
    view! { {none}{lots.into_iter().map(row).collect::<Vec<_>>()} }
}

fn body(
    desk: Desk,
    lot: Id,
    looks: Memo<Option<Look>>,
    form: Form,
    current: RwSignal<&'static str>,
) -> AnyView {
    pad::focus(GOOD);
    let board = move || looks.get().map(board);
    let unit = Signal::derive(move || {
        looks.read().as_ref().map(|look| look.unit.clone()).filter(|it| !it.is_empty())
    });
    let says = move || looks.get().map(says);
    let any = Memo::new(move |_| !form.get(CULLED).trim().is_empty());
    let culls = move || any.get().then(|| of_the_culled(desk, lot, form));
    view! {
        {board}
        <Cells>
            {Cell::number(GOOD, words::good()).unit(unit).padded(current).draw(form)}
            {Cell::number(CULLED, words::culled()).unit(unit).padded(current).draw(form)}
        </Cells>
        {culls}
        {says}
        {cautions::once_of(core_cautions::sorting())}
    }
}

/// How far what is culled had come, and whether anybody could expect it.
fn of_the_culled(desk: Desk, lot: Id, form: Form) -> AnyView {
    let choices = LINKS.iter().map(|link| Choice::plain(journal::link(*link))).collect();
    let chosen = Signal::derive(move || {
        let link = desk.read(|view| link(view, form, lot));
        LINKS.iter().position(|it| *it == link).unwrap_or_default()
    });
    let choose = move |at: usize| form.set(LINK, at.to_string());
    let tap = move |()| {
        let to = if untrack(|| is_on(form)) { "" } else { "1" };
        form.set(UNEXPECTED, to);
    };
    view! {
        <Seg
            name=words::how_far().to_owned()
            kind=SegKind::Modes
            choices=Signal::stored(choices)
            chosen
            on_choose=Callback::new(choose)
        />
        <TickRow
            label=words::unexpected().to_owned()
            note=words::unexpected_note().to_owned()
            ticked=Signal::derive(move || is_on(form))
            on_tap=Callback::new(tap)
        />
    }
}

/// What is chosen; until then its nails were out, and once nothing is unsorted it had been sorted good.
fn link(view: &View, form: Form, lot: Id) -> Link {
    let usual = || {
        let rough = view.shop.lots.get(&lot).and_then(|lot| lot.rough);
        let told = view.shop.sorts.iter().any(|it| it.lot == lot);
        if told && rough.is_some_and(|rough| view.shop.is_sorted(lot, rough)) {
            Link::Milled
        } else {
            Link::NailsOut
        }
    };
    chosen::link(&form.get(LINK)).unwrap_or_else(usual)
}

fn is_on(form: Form) -> bool {
    form.get(UNEXPECTED) == "1"
}

/// What was looked at.
struct Found {
    lot: Id,
    on: On,
    good: Quantity,
    culled: Quantity,
    link: Link,
    unexpected: bool,
}

impl Found {
    /// A sorting; what was culled alone of sorted timber, or as nobody could expect, by itself.
    fn entries(&self) -> Vec<Body> {
        let Found { lot, on, link, unexpected, .. } = *self;
        let apart = unexpected || (link == Link::Milled && self.good.is_zero());
        let (sorted, alone) =
            if apart { (Quantity::ZERO, self.culled) } else { (self.culled, Quantity::ZERO) };
        let said = (!sorted.is_zero() && link != Link::NailsOut).then_some(link);
        let sort = Sort { on, lot, good: self.good.into(), culled: sorted.into(), link: said };
        let cull = Cull { on, lot, quantity: alone.into(), link: Some(link), unexpected };
        let sort = (alone.is_zero() || !self.good.is_zero()).then_some(Body::Sort(sort));
        let cull = (!alone.is_zero()).then_some(Body::Cull(cull));
        sort.into_iter().chain(cull).collect()
    }
}

/// What the sheet shows: the board as it would be.
#[derive(Clone, PartialEq)]
struct Look {
    name: String,
    gathered: String,
    parts: Vec<(Cut, f64, &'static str, String)>,
    today: Option<(f64, f64, String)>,
    sorted: Option<(String, String)>,
    usable: String,
    over: bool,
    unit: String,
}

fn look(desk: Desk, lot: Id, form: Form) -> Option<Look> {
    let typed = |field| read(&form.get(field)).unwrap_or_default();
    let (good, culled) = (typed(GOOD), typed(CULLED));
    let now = desk.minute();
    desk.books(|books, view| {
        let thing = Thing::of(view.shop, lot)?;
        let was = books.lot(lot)?.board;
        let on = On::Day(view.shop.zone.day(now));
        let found = Found { lot, on, good, culled, link: link(view, form, lot), unexpected: is_on(form) };
        let ids = [Id::of([0xfe; 16]), Id::of([0xff; 16])];
        let entries: Vec<(Id, Body)> = ids.into_iter().zip(found.entries()).collect();
        let with = view.shop.with(&entries);
        let is = Books::close(&with, now).lot(lot)?.board;
        Some(drawn(view, &thing, &was, &is, [good, culled]))
    })
}

fn drawn(
    view: &View,
    thing: &Thing,
    was: &salvage::Board,
    is: &salvage::Board,
    today: [Quantity; 2],
) -> Look {
    let tongue = view.tongue;
    let [good, culled] = today;
    let whole = [is.good, is.out(), is.unsorted].map(thing::number).iter().sum::<f64>();
    let share = |quantity| if whole > 0.0 { thing::number(quantity) / whole } else { 0.0 };
    let part = |cut, quantity, word| (cut, share(quantity), word, tongue.quantity(quantity));
    let parts = vec![
        part(Cut::Shelf, is.good_beside(good), words::good()),
        part(Cut::Today, good, ""),
        part(Cut::CulledToday, culled, ""),
        part(Cut::Culled, was.out(), words::culled()),
        part(Cut::ToCome, is.unsorted, words::not_yet()),
    ];
    let from = share(is.good_beside(good));
    let says = words::today_sorted(&tongue.quantity(good), &tongue.quantity(culled));
    let to = from + share(good) + share(culled);
    let sorted = is.yield_so_far.map(|so_far| {
        let so_far_says = words::yield_so_far(&tongue.quantity(is.good), &tongue.quantity(is.sorted()));
        (so_far_says, percent(view, so_far))
    });
    let usable = is.usable.map_or_else(
        || words::usable_not_known().to_owned(),
        |usable| {
            words::usable_in_all(
                &thing.amount_short(tongue, usable),
                &tongue.quantity(is.on_shelf),
                &tongue.quantity(is.to_come),
            )
        },
    );
    let gathered = is.gathered.map(|it| words::gathered(&thing.amount(tongue, it))).unwrap_or_default();
    Look {
        name: words::board_name(&gathered, &parts.iter().map(|it| (it.2, it.3.as_str())).collect::<Vec<_>>()),
        gathered,
        today: (to > from).then_some((from, to, says)),
        parts,
        sorted,
        usable,
        over: is.gathered.is_some_and(|gathered| is.sorted() > gathered),
        unit: crate::words::units::short(thing.unit).to_owned(),
    }
}

fn board(look: Look) -> AnyView {
    let parts = look.parts.into_iter().map(|(cut, share, word, figure)| BoardPart {
        cut,
        share,
        word: if share < 0.17 { String::new() } else { word.to_owned() },
        figure,
    });
    let parts = parts.collect();
    match look.today {
        Some(today) => {
            view! { <Board name=look.name origin=Hatch::Salvaged parts gathered=look.gathered sound=today/> }
        }
        None => {
            view! { <Board name=look.name origin=Hatch::Salvaged parts gathered=look.gathered/> }
        }
    }
}

fn says(look: Look) -> AnyView {
    let sorted = look.sorted.map(|(label, figure)| {
        let text = AnswerText { label, figure, ..AnswerText::default() };
        view! { <Outcome text/> }
    });
    let over = look.over.then(|| view! { <p class="note">{words::more_than_gathered()}</p> });
    view! { {sorted}<p class="note">{look.usable}</p>{over} }
}

/// A share as whole hundredths.
pub fn percent(view: &View, share: Ratio) -> String {
    words::percent(&view.tongue.number(&share.hundredths().shown_to(0)))
}

fn keep(desk: Desk, go: Go, lot: Id, form: Form) {
    form.all_right();
    if form.now(GOOD).trim().is_empty() && form.now(CULLED).trim().is_empty() {
        form.wrong(GOOD, words::sort_something().to_owned());
        return;
    }
    let quantity = |field| form.read(field, |text| marks::quantity(text, marks::Hint::default()));
    let (good, culled) = (quantity(GOOD), quantity(CULLED));
    let unit = desk.now_read(|view| view.shop.lots.get(&lot).map(|lot| lot.unit));
    let Some(unit) = unit.filter(|_| !form.is_wrong()) else { return };
    let in_unit = |field: &str, typed: Option<marks::Typed>| match typed.map(|it| it.in_unit(unit)) {
        None => Quantity::ZERO,
        Some(Ok(quantity)) => quantity,
        Some(Err(refusal)) => {
            form.wrong(field, crate::words::refusal::sentence(&refusal));
            Quantity::ZERO
        }
    };
    let (good, culled) = (in_unit(GOOD, good), in_unit(CULLED, culled));
    if form.is_wrong() {
        return;
    }
    let entries = [desk.fresh(), desk.fresh()];
    let (chosen_link, unexpected) =
        (desk.now_read(|view| untrack(|| link(view, form, lot))), untrack(|| is_on(form)));
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            let found = Found { lot, on, good, culled, link: chosen_link, unexpected };
            entries.into_iter().zip(found.entries()).map(|(id, body)| Change::write(id, body)).collect()
        },
        move |after| {
            let what = words::sorted(&after.tongue.quantity(good), &after.tongue.quantity(culled));
            let name = Thing::of(after.shop, lot).map(|thing| thing.name);
            Mark { kind: words::sort_kind().to_owned(), what, second: name }.into()
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.instead(&Place::Lot(lot));
            }
        },
    );
}

fn read(text: &str) -> Option<Quantity> {
    marks::quantity(text, marks::Hint::default()).ok().map(marks::Typed::quantity)
}
