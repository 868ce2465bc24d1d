//! What to ask for one piece: from a margin, a mark-up, or what an hour is to earn; with a fee, and tax on top.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText},
        field::Cells,
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Leads, SumRow, SumText, Sums},
    },
    screens::{
        first_amount,
        form_keys::form_keys,
        shop,
        stock::form::{Cell, Form},
    },
    shell::{
        Desk, Go,
        desk::{Mark, Marked, View},
        frame::Places,
    },
    words::{refusal, what_if as words},
};
use benchslate_core::{
    costing::{
        Ahead, Books,
        price::{NoPrice, OnePiece, Price, Wish, price},
        what_if::{Tried, not_taken, take},
    },
    journal::Id,
    measure::{Dec, number},
};

const WAY: &str = "way";
const MUCH: &str = "much";
const FEE: &str = "fee";
const TAX: &str = "tax";

/// The form.
#[component]
pub fn PriceSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open_of(desk, "price", Some(of));
    form.offer(vec![(WAY.to_owned(), "0".to_owned())]);
    let one = Memo::new(move |_| desk.books(|books, view| looked(books, view, of)));
    let title =
        Signal::derive(move || one.read().as_ref().map(|it| words::price_title(&it.0)).unwrap_or_default());
    let way = Signal::derive(move || form.get(WAY).parse::<usize>().unwrap_or(0));
    let choices: Vec<Choice> = words::ways().into_iter().map(Choice::plain).collect();
    let choose = Callback::new(move |at: usize| form.set(WAY, at.to_string()));
    let answer = move || {
        let one = one.get()?.1?;
        let read = asked(form, way.get());
        Some(desk.read(|view| drawn(view, &one, read)))
    };
    let none = move || one.read().as_ref().is_some_and(|it| it.1.is_none());
    let much = move || {
        let cell = Cell::words(MUCH, words::much(way.get()));
        let cell = if way.get() == 2 { cell.unit(first_amount::beside(desk)) } else { cell.of("%") };
        cell.draw(form)
    };
    let keep = Callback::new(move |()| expect(desk, go, form, of, one.get_untracked().and_then(|it| it.1)));
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above>
                <Read name=title below=words::price_below().to_owned()>
                    <div class="form">
                        <Seg name=words::goes_by().to_owned() choices=Signal::stored(choices) chosen=way kind=SegKind::Modes on_choose=choose/>
                        <Cells>
                            {much}
                            {Cell::words(FEE, words::fee()).of("%").draw(form)}
                            {Cell::words(TAX, words::tax()).of("%").draw(form)}
                        </Cells>
                        {answer}
                        {move || none().then(|| view! { <p class="lead">{words::nothing_known()}</p> })}
                        <p class="note">{words::price_note()}</p>
                    </div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::expect_it(), keep)}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

fn looked(books: &Books, view: &View, build: Id) -> Option<(String, Option<OnePiece>)> {
    let title = view.shop.builds.get(&build)?.title.clone();
    Some((title, books.one_piece(view.shop, build)))
}

/// What is typed, read; none: not typed yet, or it can't be read.
fn asked(form: Form, way: usize) -> Option<(Wish, Dec, Dec)> {
    let much = form.get(MUCH);
    let wish = match way {
        0 => Wish::Margin(Dec(number::percent(&much).ok()?)),
        1 => Wish::Markup(Dec(number::percent(&much).ok()?)),
        _ => Wish::AnHour(Dec(number::amount(&much).ok()?)),
    };
    let share = |field: &str| match form.get(field) {
        text if text.trim().is_empty() => Some(Dec::default()),
        text => number::percent(&text).ok().map(Dec),
    };
    Some((wish, share(FEE)?, share(TAX)?))
}

fn drawn(view: &View, one: &OnePiece, read: Option<(Wish, Dec, Dec)>) -> AnyView {
    let money = |it| view.tongue.money(it);
    let cost = SumText {
        label: words::one_piece().to_owned(),
        working: Some(
            one.ahead
                .map_or_else(|| words::of_good(one.pieces), |ahead| words::as_planned(one.pieces, ahead)),
        ),
        figure: money(one.cost),
        ..SumText::default()
    };
    let Some((wish, fee, tax)) = read else {
        return view! { <Sums><SumRow text=cost leads=Leads::Nowhere signed=false/></Sums> };
    };
    match price(one, wish, fee, tax) {
        Ok(found) => {
            let text = AnswerText {
                label: words::to_ask().to_owned(),
                figure: money(found.each),
                note: Some(words::before_tax().to_owned()),
                lacks: false,
            };
            let rows: Vec<AnyView> = rows(view, &found, one.ahead)
                .into_iter()
                .map(|(label, figure)| {
                    let text = SumText { label: label.to_owned(), figure, ..SumText::default() };
                    view! { <SumRow text leads=Leads::Nowhere signed=false/> }
                })
                .collect();
            view! { <Answer text/><Sums><SumRow text=cost leads=Leads::Nowhere signed=false/>{rows}</Sums> }
        }
        Err(why) => view! { <p class="lead">{no_price(why)}</p> },
    }
}

fn rows(view: &View, found: &Price, ahead: Option<Ahead>) -> Vec<(&'static str, String)> {
    let money = |it| view.tongue.money(it);
    let mut rows = vec![(words::with_tax(), money(found.with_tax))];
    if found.fee != Default::default() {
        rows.push((words::fee_kept(), money(found.fee)));
    }
    rows.push((words::left_over(), money(found.profit)));
    rows.extend(found.an_hour.map(|hour| (words::an_hour(ahead.unwrap_or(Ahead::Nothing)), money(hour))));
    rows
}

fn no_price(why: NoPrice) -> &'static str {
    match why {
        NoPrice::NothingLeft => words::nothing_left(),
        NoPrice::NoOwnHours => words::no_hours_to_pay(),
        NoPrice::TooLarge => words::too_large(),
    }
}

/// The price becomes what the sale of the build is expected to bring.
fn expect(desk: Desk, go: Go, form: Form, build: Id, one: Option<OnePiece>) {
    form.all_right();
    let way = form.now(WAY).parse::<usize>().unwrap_or(0);
    if form.now(MUCH).trim().is_empty() {
        form.wrong(MUCH, words::say_how_much().to_owned());
    }
    for field in [MUCH, FEE, TAX] {
        let text = form.now(field);
        let read = if field == MUCH && way == 2 { number::amount(&text) } else { number::percent(&text) };
        if let (Err(refused), false) = (read, text.trim().is_empty()) {
            form.wrong(field, refusal::sentence(&refused));
        }
    }
    let found = one.zip(asked(form, way)).map(|(one, (wish, fee, tax))| (one, price(&one, wish, fee, tax)));
    if let Some((_, Err(why))) = &found {
        form.wrong(MUCH, no_price(*why).to_owned());
    }
    let (Some((one, Ok(found))), false) = (found, form.is_wrong()) else { return shop::to_the_wrong() };
    let tried = Tried { price: Some(found.each), ..Tried::default() };
    let of = (build, one.in_all(found.each));
    if let Some(why) = desk.now_read(|view| not_taken(view.journal, view.shop, of, tried, desk.at_tap())) {
        form.wrong(MUCH, words::not_taken(why).to_owned());
        return shop::to_the_wrong();
    }
    desk.act_then(
        move |hand| take(hand.journal, hand.shop, of, tried, hand.now, hand.fresh).unwrap_or_default(),
        move |after| {
            let (kind, what) = (
                words::kind_price().to_owned(),
                words::marked_price(&after.tongue.money(found.each), one.pieces),
            );
            Marked::from(Mark {
                kind,
                what,
                second: after.shop.builds.get(&build).map(|it| it.title.clone()),
            })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
