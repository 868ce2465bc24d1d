//! A salvaged lot: the board of what became of it, and what it saved against new, own time counted in three ways.

use super::{Drawn, drawn, drawn_rows, keys};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Tone},
        board::{Board, BoardPart, Cut},
        hatch::Hatch,
        seg::Seg,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::{SumTotal, Sums},
    },
    screens::{
        cautions,
        cost::{self, At, Remarks, Row, Say},
        stock::{
            thing::{self, Thing},
            ways::{self, AN_HOUR, AT_RATE, MoneyLook},
        },
    },
    shell::{Desk, desk::View, frame::Places, mark::LastMarkHere},
    words::{salvage as words, stock, units},
};
use benchslate_core::{
    costing::{Books, Gap, LotBook, Path, Statement, present},
    journal::Id,
    measure::Shown,
};

#[component]
pub fn Salvaged(thing: Thing) -> impl IntoView {
    let desk = Desk::here();
    let (title, keys) = (thing.name.clone(), keys(desk, &thing));
    let name = title.clone();
    let way = RwSignal::new(AT_RATE);
    let looks = Memo::new(move |_| desk.books(|books, view| look(books, view, &thing, way.get())));
    let paid = Signal::derive(move || looks.read().as_ref().and_then(|look| look.paid.clone()));
    let choices = Signal::derive(move || {
        looks.read().as_ref().map(|look| ways::choices(&look.figures)).unwrap_or_default()
    });
    view! {
        <Sheet>
            <Head title=title note=paid tight=true/>
            <Above>
                <Read name=name below=words::more_below().to_owned()>{move || looks.get().map(sheet)}</Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <Keys class="low" lead=words::count_own_time().to_owned()>
                        <Seg
                            name=words::count_own_time().to_owned()
                            choices
                            chosen=way
                            on_choose=Callback::new(move |at| way.set(at))
                        />
                    </Keys>
                    {keys}
                </Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// The sheet in plain words.
#[derive(Clone, PartialEq)]
struct Look {
    paid: Option<String>,
    label: &'static str,
    note: String,
    figure: String,
    lacks: bool,
    red: bool,
    figures: [String; 3],
    board: Plank,
    money: Option<MoneyLook>,
    one: Option<String>,
    rows: Vec<Row>,
    total: Option<(&'static str, String)>,
    against: Option<String>,
    cost: (Id, String, String),
    drawn: Vec<Drawn>,
    remarks: Remarks,
}

#[derive(Clone, PartialEq)]
struct Plank {
    name: String,
    gathered: String,
    parts: Vec<(Cut, f64, &'static str, String)>,
    sound: Option<(f64, String)>,
    broken: bool,
}

fn look(books: &Books, view: &View, thing: &Thing, way: usize) -> Option<Look> {
    let id = thing.id();
    let book = books.lot(id)?;
    let (say, minor) = (Say { books, view }, view.tongue.minor());
    let saving = &book.saving;
    let statement = match way {
        AN_HOUR => &saving.paid_an_hour,
        AT_RATE => &saving.at_rate,
        _ => &saving.time_free,
    };
    // An hour's pay is worked out from the sum without own time.
    let summed = if way == AN_HOUR { &saving.time_free } else { statement };
    let level = present::alone(summed, minor);
    let path = Path { steps: vec![summed.rule.step()] };
    let shown = present::alone(statement, minor).shown;
    let red = shown.is_some_and(Shown::is_negative);
    let tongue = view.tongue;
    let money = |shown: Shown| tongue.shown(if shown.is_negative() { shown.negated() } else { shown });
    let total = level.shown.map(|shown| {
        let label = if shown.is_negative() { words::dearer_total() } else { words::saved_total() };
        (label, money(shown))
    });
    let cost_path = Path { steps: vec![book.cost.rule.step()] }.to_string();
    let lot = view.shop.lots.get(&id);
    // Nothing drawn, nothing lost: there is no sum yet.
    let idle = statement.gaps.iter().any(|gap| matches!(gap, Gap::NothingDrawn { .. }));
    Some(Look {
        paid: lot.and_then(|lot| lot.till()).map(|till| words::paid(&tongue.money(till))),
        label: ways::label(way, red),
        note: drawn_so_far(view, thing, &book),
        figure: shown.map_or_else(
            || ways::lacks(statement).to_owned(),
            |shown| if way == AN_HOUR { tongue.shown(shown) } else { money(shown) },
        ),
        lacks: shown.is_none(),
        red,
        figures: [&saving.time_free, &saving.at_rate, &saving.paid_an_hour].map(|it| ways::on_key(view, it)),
        board: plank(view, thing, &book),
        money: ways::money_look(view, &level, way),
        one: book
            .unit_cost
            .map(|one| words::one_comes_to(&units::each_one(thing.unit, None), &tongue.money(one.rounded()))),
        rows: if idle { Vec::new() } else { cost::rows(say, &level, At { of: id, path: &path }) },
        total: total.filter(|_| !idle),
        against: saving.new.as_ref().map(|new| words::against(&tongue.day_year(new.on))),
        cost: (id, book.cost.money().map(|it| tongue.money(it)).unwrap_or_default(), cost_path),
        drawn: drawn(books, view, thing),
        remarks: told(say, statement, &book),
    })
}

fn drawn_so_far(view: &View, thing: &Thing, book: &LotBook) -> String {
    if book.board.drawn.is_zero() {
        return words::counted_on_what_is_used().to_owned();
    }
    words::on_drawn(&thing.amount(view.tongue, book.board.drawn))
}

/// Gaps of the figure and of the lot, each once; kinds that no entry tells of yet are named as such.
fn told(say: Say, statement: &Statement, book: &LotBook) -> Remarks {
    let mut all = Remarks::of(say, statement);
    for more in Remarks::of(say, &book.cost).lacks {
        if !all.lacks.contains(&more) {
            all.lacks.push(more);
        }
    }
    for more in Remarks::of(say, &book.cost).odd {
        if !all.odd.contains(&more) {
            all.odd.push(more);
        }
    }
    all
}

fn plank(view: &View, thing: &Thing, book: &LotBook) -> Plank {
    let (board, tongue) = (&book.board, view.tongue);
    let parts = [
        (Cut::Used, board.drawn, words::in_the_bench()),
        (Cut::Shelf, board.on_shelf, words::shelf()),
        (Cut::ToCome, board.unsorted, stock::not_yet()),
        (Cut::Culled, board.culled, stock::culled()),
    ];
    let whole: f64 = parts.iter().map(|(_, quantity, _)| thing::number(*quantity)).sum();
    let part = |(cut, quantity, word)| {
        let share = if whole > 0.0 { thing::number(quantity) / whole } else { 0.0 };
        (cut, share, word, tongue.quantity(quantity))
    };
    let parts: Vec<_> = parts.into_iter().map(part).collect();
    let sound: f64 = parts.iter().take(2).map(|part| part.1).sum();
    let so_far = board.yield_so_far.map(|share| super::super::sort::percent(view, share));
    let gathered = board.gathered.map(|it| stock::gathered(&thing.amount(tongue, it))).unwrap_or_default();
    Plank {
        name: stock::board_name(&gathered, &parts.iter().map(|it| (it.2, it.3.as_str())).collect::<Vec<_>>()),
        gathered,
        sound: (sound > 0.0 && board.unsorted.is_zero())
            .then(|| (sound, words::sound(&tongue.quantity(board.good), so_far.as_deref()))),
        broken: !board.culled.is_zero(),
        parts,
    }
}

fn sheet(look: Look) -> AnyView {
    let text = AnswerText {
        label: look.label.to_owned(),
        note: Some(look.note),
        figure: look.figure,
        lacks: look.lacks,
    };
    let tone = if look.red { Tone::Red } else { Tone::Ink };
    let total = look.total.map(|(label, figure)| view! { <SumTotal label=label.to_owned() figure/> });
    let sums = (!look.rows.is_empty()).then(|| {
        view! { <Sums>{look.rows.into_iter().map(cost::drawn).collect::<Vec<_>>()}{total}</Sums> }
    });
    let one = look.one.map(|one| view! { <p class="note">{one}</p> });
    let against = look.against.map(|against| view! { <p class="note">{against}</p> });
    let desk = Desk::here();
    let (lot, figure, path) = look.cost;
    view! {
        <Answer text tone/>
        {board(look.board)}
        {look.money.map(ways::money)}
        {one}
        {sums}
        {against}
        {super::cost_link(lot, figure, path, words::in_two_pools())}
        {cost::remarks(look.remarks)}
        {drawn_rows(look.drawn)}
        {cautions::once(Signal::derive(move || desk.read(|view| cautions::of_thing(view, lot))))}
        {cautions::way(desk, lot)}
    }
}

fn board(plank: Plank) -> AnyView {
    let part = |(cut, share, word, figure): (Cut, f64, &str, String)| BoardPart {
        cut,
        share,
        // The word of a narrow part would run over its neighbours; the sentence read aloud has it.
        word: if share < 0.17 { String::new() } else { word.to_owned() },
        figure,
    };
    let parts = plank.parts.into_iter().map(part).collect();
    let broken = plank.broken;
    match plank.sound {
        Some((to, text)) => view! {
            <Board name=plank.name origin=Hatch::Salvaged parts gathered=plank.gathered sound=(0.0, to, text) broken/>
        },
        None => {
            view! { <Board name=plank.name origin=Hatch::Salvaged parts gathered=plank.gathered broken/> }
        }
    }
}
