//! A salvaged lot: the board of what became of it, and what it saved against new, own time counted in three ways.

use super::{Drawn, drawn, drawn_rows, expected, keys};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        board::{Board, BoardPart, Cut},
        hatch::Hatch,
        sheet::{Above, Below, Hand, HandKind, Head, Read, Sheet},
        sum_row::Leads,
    },
    screens::{
        cautions,
        cost::{self, Remarks, Say},
        months::{self, Row},
        stock::{
            thing::{self, Thing},
            ways::{self, AT_RATE, Answered},
        },
    },
    shell::{Desk, Place, desk::View, frame::Places, mark::LastMarkHere},
    words::{salvage as words, stock, units},
};
use benchslate_core::{
    costing::{Books, Gap, LotBook, Path, Statement},
    journal::Id,
};

#[component]
pub fn Salvaged(thing: Thing) -> impl IntoView {
    let desk = Desk::here();
    let (title, keys) = (thing.name.clone(), keys(desk, &thing));
    let (name, moves) = (title.clone(), super::moves(&thing));
    let way = RwSignal::new(AT_RATE);
    let looks = Memo::new(move |_| desk.books(|books, view| look(books, view, &thing, way.get())));
    let paid = Signal::derive(move || looks.read().as_ref().and_then(|look| look.paid.clone()));
    let choices =
        Signal::derive(move || looks.read().as_ref().map(|look| look.answered.choices()).unwrap_or_default());
    view! {
        <Sheet>
            <Head title=title note=paid tight=true/>
            <Above>
                <Read name=name below=words::more_below().to_owned()>{move || looks.get().map(sheet)}{moves}</Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    {ways::keys(choices, way)}
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
    answered: Answered,
    note: String,
    board: Plank,
    one: Option<String>,
    against: Option<String>,
    cost: (Id, String, String),
    above: Option<Row>,
    reaches: String,
    expected: Option<(Id, Vec<[String; 3]>)>,
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
    let (say, tongue) = (Say { books, view }, view.tongue);
    let saving = &book.saving;
    let three = [&saving.time_free, &saving.at_rate, &saving.paid_an_hour];
    let statement = ways::chosen(three, way);
    let mut answered = ways::answered(say, id, three, way);
    // Nothing drawn, nothing lost: there is no sum yet.
    if statement.gaps.iter().any(|gap| matches!(gap, Gap::NothingDrawn { .. })) {
        answered.rows.clear();
    }
    let cost_path = Path { steps: vec![book.cost.rule.step()] }.to_string();
    let lot = view.shop.lots.get(&id);
    Some(Look {
        paid: lot.and_then(|lot| lot.till()).map(|till| words::paid(&tongue.money(till))),
        answered,
        note: drawn_so_far(view, thing, &book),
        board: plank(view, thing, &book),
        one: book
            .unit_cost
            .map(|one| words::one_comes_to(&units::each_one(thing.unit, None), &tongue.money(one.rounded()))),
        against: saving.new.as_ref().map(|new| words::against(&tongue.day_year(new.on))),
        cost: (id, book.cost.money().map(|it| tongue.money(it)).unwrap_or_default(), cost_path),
        above: super::above(view, &book),
        reaches: reaches(view, thing, &book),
        expected: expected::rows(books, view, id, thing),
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

/// `69 of 140 bd ft in the piece`.
fn reaches(view: &View, thing: &Thing, book: &LotBook) -> String {
    let first = book.chain.links.first().map(|it| thing.amount_short(view.tongue, it.quantity));
    words::reaches(&view.tongue.quantity(book.board.drawn), &first.unwrap_or_default())
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
        (Cut::Culled, board.lost, stock::lost()),
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
            .then(|| (sound, words::sound(&tongue.quantity(board.found_good()), so_far.as_deref()))),
        broken: !board.out().is_zero(),
        parts,
    }
}

fn sheet(look: Look) -> AnyView {
    let head = look.answered.head(look.note);
    let money = look.answered.money.clone().map(ways::money);
    let one = look.one.map(|one| view! { <p class="note">{one}</p> });
    let against = look.against.map(|against| view! { <p class="note">{against}</p> });
    let desk = Desk::here();
    let (lot, figure, path) = look.cost;
    view! {
        {head}
        {board(look.board)}
        {money}
        {one}
        {look.answered.sum()}
        {against}
        {look.above.map(|it| months::drawn(vec![it]))}
        {super::cost_link(lot, figure, path, words::in_two_pools())}
        <RowLink
            label=words::the_chain().to_owned()
            end=look.reaches
            leads=Leads::To(Place::Chain(lot).href())
        />
        {look.expected.map(expected::draw)}
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
