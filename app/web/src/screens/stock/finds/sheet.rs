//! A find that was kept: what it would come to, one way at a time; leave it, or take it home.

use super::{home, worth};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, RowLink, Tone},
        board::{Board, BoardPart, Cut},
        hatch::Hatch,
        key::{Key, KeyKind},
        money_board::{Amounts, MoneyBoard, MoneyText},
        plain,
        seg::{Choice, Seg},
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{
        away, cautions,
        stock::{sort::percent, thing},
    },
    shell::{
        Desk, Go, Place,
        desk::{Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{finds as words, salvage, stock, units},
};
use benchslate_core::{
    costing::salvage::{Appraisal, Outcome, appraise},
    journal::{Body, Id, cautions as core_cautions, shop::Find},
    measure::{Money, Quantity},
};

/// Ways to count own time.
const FREE: usize = 0;
const AT_RATE: usize = 1;

/// A kept find.
#[component]
pub fn FindSheet(find: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let (case, way) = (RwSignal::new(1_usize), RwSignal::new(AT_RATE));
    let looks = Memo::new(move |_| desk.read(|view| look(view, find, case.get(), way.get())));
    let title = Signal::derive(move || looks.read().as_ref().map(|it| it.name.clone()).unwrap_or_default());
    let all = move || match looks.get() {
        Some(look) => sheet(desk, find, look),
        None if desk.phase.get() == Phase::Ready => view! { <p class="note">{stock::not_there()}</p> },
        None => ().draw(),
    };
    view! {
        <Sheet>
            <Head title note=Signal::derive(move || looks.read().as_ref().map(|it| it.stands.clone())) tight=true/>
            <Above><Read name=words::find().to_owned() below=words::more().to_owned()>{all}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    {set(words::if_it_goes(), looks, case, |look| look.cases.clone())}
                    {set(salvage::count_own_time(), looks, way, |look| look.ways.clone())}
                    {move || keys(desk, go, find, looks.read().as_ref().is_some_and(|it| it.home.is_none()))}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

fn set(
    name: &'static str,
    looks: Memo<Option<Look>>,
    chosen: RwSignal<usize>,
    of: fn(&Look) -> Vec<Choice>,
) -> AnyView {
    let choices = Signal::derive(move || looks.read().as_ref().map(of).unwrap_or_default());
    view! {
        <Keys class="low" lead=name.to_owned()>
            <Seg name=name.to_owned() choices chosen on_choose=Callback::new(move |at| chosen.set(at))/>
        </Keys>
    }
}

fn keys(desk: Desk, go: Go, find: Id, open: bool) -> AnyView {
    if !open {
        return ().draw();
    }
    let leave = move |()| {
        away::put(desk, find, false);
        go.instead(&Place::Stock);
    };
    let take = move |()| {
        let body = desk.now_read(|view| match view.journal.body(find) {
            Some(Body::Find(body)) => Some(body.clone()),
            _ => None,
        });
        let Some(body) = body else { return };
        let taken = home::Taken { entry: find, find: body, money: false, ids: [desk.fresh(), desk.fresh()] };
        home::take(desk, taken, move |lot| go.instead(&Place::Lot(lot)));
    };
    view! {
        <Keys class="mid">
            <Key label=words::leave_it().to_owned() on_tap=Callback::new(leave)/>
            <Key class="wide" label=words::take_it_home().to_owned() kind=KeyKind::Filled on_tap=Callback::new(take)/>
        </Keys>
    }
}

#[derive(Clone, PartialEq)]
struct Look {
    name: String,
    stands: String,
    home: Option<Id>,
    answer: (&'static str, String, String, bool, bool),
    board: Option<(String, f64, String, String, String)>,
    money: Option<(Amounts, [String; 4])>,
    working: Option<String>,
    against: Option<String>,
    worth: worth::Look,
    cases: Vec<Choice>,
    ways: Vec<Choice>,
}

fn look(view: &View, id: Id, case: usize, way: usize) -> Option<Look> {
    let find = view.shop.finds.get(&id)?;
    let told = appraise(view.shop, find);
    let outcome = told.outcomes.get(case).copied()?;
    let tongue = view.tongue;
    let money = |it: Option<Money>| it.map_or_else(|| salvage::no_figure().to_owned(), |it| tongue.money(it));
    let figures = [outcome.time_free, outcome.at_rate, outcome.an_hour];
    let figure = figures.get(way).copied().flatten();
    let red = figure.is_some_and(|it| it.is_negative()) && way <= AT_RATE;
    let label = match (way, red) {
        (FREE | AT_RATE, true) => salvage::dearer(),
        (FREE | AT_RATE, false) => words::would_save(),
        _ => words::hour_would_pay(),
    };
    let size = |it: Money| tongue.money(if red { it.unsigned() } else { it });
    let choice = |label: &str, it: Option<Money>| Choice { label: label.to_owned(), note: Some(money(it)) };
    let of_case = |it: &Outcome| match way {
        FREE => it.time_free,
        AT_RATE => it.at_rate,
        _ => it.an_hour,
    };
    let home = find.lot.filter(|lot| view.shop.lots.contains_key(lot));
    Some(Look {
        name: find.name.clone(),
        stands: if home.is_some() { words::taken_home() } else { words::not_home() }.to_owned(),
        home,
        answer: (
            label,
            words::under(
                case,
                told.rate.filter(|_| way == AT_RATE).map(|rate| tongue.money(rate)).as_deref(),
            ),
            figure.map_or_else(|| salvage::no_figure().to_owned(), size),
            figure.is_none(),
            red,
        ),
        board: board(view, find, &outcome),
        money: money_look(view, &told, &outcome, way),
        working: working(view, &told, &outcome),
        against: find.new.as_ref().map(|new| words::against(&tongue.day_year(new.on))),
        worth: worth::look(view, &told),
        cases: words::cases()
            .iter()
            .zip(&told.outcomes)
            .map(|(label, it)| choice(label, of_case(it)))
            .collect(),
        ways: [salvage::free(), salvage::at_rate(), words::pays_an_hour()]
            .iter()
            .zip(figures)
            .map(|(label, it)| choice(label, it))
            .collect(),
    })
}

fn board(view: &View, find: &Find, it: &Outcome) -> Option<(String, f64, String, String, String)> {
    let (rough, usable) = (find.rough?, it.usable?);
    let amount = |quantity: Quantity| units::amount(view.tongue, quantity, find.unit, None);
    let share = thing::share(usable, rough);
    Some((
        stock::gathered(&amount(rough)),
        share,
        view.tongue.quantity(usable),
        it.culled.map(|culled| view.tongue.quantity(culled)).unwrap_or_default(),
        salvage::sound(&view.tongue.quantity(usable), Some(&percent(view, it.share))),
    ))
}

fn money_look(view: &View, told: &Appraisal, it: &Outcome, way: usize) -> Option<(Amounts, [String; 4])> {
    let (instead, cash) = (it.instead?, told.cash?);
    let own = it.own_time.filter(|_| way == AT_RATE);
    let saved = if own.is_some() { it.at_rate? } else { it.time_free? };
    let tongue = view.tongue;
    let size = |it: Money| plain::read(&it.shown(2));
    let amounts = Amounts { instead: size(instead), cash: size(cash), own_time: own.map_or(0.0, size) };
    let outcome = if saved.is_negative() {
        salvage::dearer_by(&tongue.money(saved.unsigned()))
    } else {
        salvage::saved_so_much(&tongue.money(saved))
    };
    Some((
        amounts,
        [
            salvage::bought_instead(&tongue.money(instead)),
            salvage::cash(&tongue.money(cash)),
            own.map(|own| salvage::own_time(&tongue.money(own))).unwrap_or_default(),
            outcome,
        ],
    ))
}

/// `430.91 − 71.00 − 14 h 00 × 28.00 = −32.09. An hour of it would pay 25.71.`
fn working(view: &View, told: &Appraisal, it: &Outcome) -> Option<String> {
    let tongue = view.tongue;
    let terms = [it.instead?, told.cash?, told.rate?, it.at_rate?].map(|it| tongue.money(it));
    Some(words::working(&terms, &tongue.hours(it.time), it.an_hour.map(|it| tongue.money(it)).as_deref()))
}

fn sheet(desk: Desk, find: Id, look: Look) -> AnyView {
    let (label, note, figure, lacks, red) = look.answer;
    let text = AnswerText { label: label.to_owned(), note: Some(note), figure, lacks };
    let tone = if red { Tone::Red } else { Tone::Ink };
    let board = look.board.map(|(gathered, share, usable, culled, sound)| {
        let name =
            stock::board_name(&gathered, &[(words::usable_word(), &usable), (stock::culled(), &culled)]);
        let part =
            |cut, share, word: &str, figure: String| BoardPart { cut, share, word: word.to_owned(), figure };
        let parts = vec![
            part(Cut::Used, share, words::usable_word(), usable),
            part(Cut::Culled, 1.0 - share, stock::culled(), culled),
        ];
        view! { <Board name origin=Hatch::Salvaged parts gathered sound=(0.0, share, sound) broken=true/> }
    });
    let money = look.money.map(|(amounts, [instead, cash, own_time, outcome])| {
        let name = [&instead, &cash, &own_time, &outcome].map(String::as_str).join("; ");
        let text = MoneyText { instead, cash, own_time, outcome, name };
        view! { <MoneyBoard amounts text/> }
    });
    let working = look.working.map(|text| view! { <p class="note">{text}</p> });
    let against = look.against.map(|text| view! { <p class="note">{text}</p> });
    let home = look.home.map(|lot| {
        let leads = Leads::To(Place::Lot(lot).href());
        view! { <RowLink label=words::the_lot().to_owned() end=words::expected_there().to_owned() leads/> }
    });
    view! {
        <Answer text tone/>
        {board}
        {money}
        {working}
        {against}
        {home}
        {worth::sheet(look.worth)}
        <RowLink label=salvage::correct().to_owned() leads=Leads::To(Place::Entry(find).href())/>
        {cautions::once(Signal::derive(move || desk.read(|view| {
            view.shop.finds.get(&find).map(|it| core_cautions::coming_in(it.mark)).unwrap_or_default()
        })))}
        {cautions::way(desk, find)}
    }
}
