//! Laws of the books, over random histories.
//!
//! Nothing is lost between what came in and where it went; a parent is the sum of its parts, also as
//! shown; the order in which lines arrive changes nothing; odd data never panics.

mod histories;
mod odd;

use super::{
    Books, BuildCost, Formula, LotBook, Part, PartOf, Parts, Rule, ShelfLine, Statement, Value, present,
    salvage::By,
};
use crate::{
    fixture::Fixture,
    journal::{Id, Journal, Shop, kinds::Bearer},
    measure::{Money, Quantity},
};
use histories::histories;
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(192))]

    #[test]
    fn what_came_in_was_drawn_or_lost_or_is_on_the_shelf(history in histories()) {
        let it = history.read();
        let shop = it.shop();
        let books = Books::close(&shop, it.end());
        across_adds_up(&books)?;
        each_lot_adds_up(&books)?;
        each_item_adds_up(&books, &shop)?;
        prop_assert_eq!(all_in(&books, &shop), all_out(&books, &shop));
    }

    #[test]
    fn a_parent_is_the_sum_of_its_parts(history in histories()) {
        let it = history.read();
        let (builds, lots, _) = everything(&it.books(), &it.shop());
        for root in builds.iter().flat_map(BuildCost::roots).chain(lots.iter().flat_map(LotBook::roots)) {
            adds_up(root)?;
        }
        for build in &builds {
            prop_assert_eq!(build.true_cost.money().unwrap_or_default(), build.parts.total());
            prop_assert_eq!(build.bridge.money().unwrap_or_default(), build.parts.total());
            // Its items never bear more one-off work than it does; each is rounded once.
            let items = i128::from(build.items.good);
            let of_items = build.batch.one_off_each.micros() * items;
            let share = build.one_off.map(|it| it.share.total()).unwrap_or_default();
            prop_assert!(of_items <= share.micros() + items + 9, "{:?}", build.one_off);
            let cash = |parts: &Parts| parts.money().plus(parts.paid_labour());
            // One-off money is used up whole where it was spent; the true cost holds a share of it.
            let share = build.one_off.map(|it| cash(&it.share)).unwrap_or_default();
            let spent = build.bridge.part(|rule| *rule == Rule::OneOffMoney).and_then(Statement::money);
            let cash = cash(&build.parts).minus(share).plus(spent.unwrap_or_default());
            let used_up = build.used_up().and_then(Statement::money);
            prop_assert_eq!(build.used_up_by_kind.money().unwrap_or_default(), cash);
            prop_assert_eq!(used_up.unwrap_or_default(), cash);
        }
    }

    #[test]
    fn both_sides_make_up_the_whole_and_shares_of_income_what_came(history in histories()) {
        let it = history.read();
        let (books, shop) = (it.books(), it.shop());
        for build in everything(&books, &shop).0 {
            let (piece, film) = build.side_parts;
            prop_assert_eq!(piece.plus(film), build.parts);
            prop_assert_eq!(build.sides.money().unwrap_or_default(), build.parts.total());
            let earned = &build.earned;
            prop_assert_eq!(earned.net_piece.plus(earned.net_film), earned.net.money().unwrap_or_default());
        }
        let came = shop.incomes.iter().flat_map(|it| it.received.iter()).map(|it| it.net());
        prop_assert_eq!(books.net_of_all(), came.fold(Money::ZERO, Money::plus));
    }

    #[test]
    fn closing_changes_no_figure_at_that_moment(history in histories()) {
        let mut it = history.read();
        let before = it.books();
        it.add("close bench");
        it.add("close trays");
        let after = it.books();
        for build in ["bench", "trays"] {
            let cost = |books: &Books| books.build_cost(it.id(build)).true_cost.money().unwrap_or_default();
            prop_assert!(a_few_millionths(&after, cost(&after), cost(&before)), "{:?}", build);
        }
        prop_assert!(a_few_millionths(&after, after.shelf_value(), before.shelf_value()));
    }

    /// And whatever the formula says, builds that were closed before keep what they cost.
    #[test]
    fn a_change_of_formula_moves_cost_between_open_builds_and_the_shelf_only(history in histories(), day in 1..29_u32) {
        let mut it = history.read();
        it.add("close bench");
        let closed = there(&it.books(), &frozen(&it));
        let (last, all) = (it.end(), |it: &Fixture| all_out(&it.books(), &it.shop()));
        let before = all(&it);
        for formula in ["first_in_first_out", "moving_average", "first_in_first_out"] {
            it.add(&format!("setting formula {formula} from 2026-02-{day:02}"));
            prop_assert_eq!(all(&it), before);
            prop_assert_eq!(still(&Books::close(&it.shop(), last), &closed), closed.clone());
        }
    }

    /// Receipts, sortings and culls, corrected lots, items that are said to be one, and all else but reopening: what is
    /// frozen stays to the millionth, and nothing is lost over it.
    #[test]
    fn the_frozen_figures_of_a_closed_build_never_move(
        history in histories(),
        later in prop::collection::vec(histories::later(), 1..12),
    ) {
        let mut it = history.read();
        it.add("close bench on 2026-02-28");
        it.add("close trays");
        let closed = frozen(&it);
        for later in &later {
            later.add(&history, &mut it);
            let (books, shop) = (it.books(), it.shop());
            let closed = there(&books, &closed);
            prop_assert_eq!(still(&books, &closed), closed, "{:?}", later);
            prop_assert_eq!(all_in(&books, &shop), all_out(&books, &shop));
        }
    }

    #[test]
    fn wear_and_blades_never_pass_their_price(history in histories()) {
        let it = history.read();
        let books = it.books();
        for (id, tool) in &it.shop().tools {
            let worn = books.ledgers.tools.rows.iter().filter(|row| row.tool == *id).map(|row| row.wear);
            prop_assert!(worn.fold(Money::ZERO, Money::plus) <= tool.to_wear().unwrap_or_default());
        }
        for blade in books.blades() {
            prop_assert!(blade.worn <= blade.cost && blade.worn.plus(blade.left) == blade.cost);
        }
    }

    #[test]
    fn saying_that_two_items_are_one_keeps_all_that_there_is(history in histories()) {
        let mut it = history.read();
        let (before, end) = (it.shop(), it.end());
        it.add("same disc hinge");
        let after = it.shop();
        let (apart, together) = (Books::close(&before, end), Books::close(&after, end));
        prop_assert_eq!(all_out(&apart, &before), all_out(&together, &after));
        // One of two found empty, or counted, is not both of them.
        if before.looks.is_empty() {
            prop_assert_eq!(drawn_and_left(&apart, &before), drawn_and_left(&together, &after));
        }
    }

    #[test]
    fn a_draw_opens_into_lines_that_make_it_up(history in histories()) {
        let it = history.read();
        let books = it.books();
        for row in &books.stock.rows {
            if let Some(draw) = books.draw(row.entry()) {
                adds_up(&draw)?;
                prop_assert_eq!(draw.money().unwrap_or_default(), row.parts.total());
            }
        }
    }

    #[test]
    fn sums_on_view_add_up_in_every_currency(history in histories(), minor in 0_u8..4) {
        let it = history.read();
        let (builds, lots, _) = everything(&it.books(), &it.shop());
        for root in builds.iter().flat_map(BuildCost::roots).chain(lots.iter().flat_map(LotBook::roots)) {
            shown_adds_up(root, root, &mut super::Path { steps: vec![root.rule.step()] }, minor)?;
        }
    }

    #[test]
    fn the_order_in_which_lines_arrive_changes_no_figure(history in histories(), seed in any::<u64>()) {
        let it = history.read();
        let mut lines = it.lines.clone();
        lines.sort_by_key(|line| line.bytes().fold(seed, |hash, byte| hash.rotate_left(7) ^ u64::from(byte)));
        let mut journal = Journal::default();
        for line in &lines {
            journal.add(line).expect("reads");
        }
        let shop = Shop::fold(&journal, &it.zone);
        let again = Books::close(&shop, it.end());
        prop_assert_eq!(everything(&again, &shop), everything(&it.books(), &it.shop()));
    }

    #[test]
    fn a_revision_taken_back_leaves_every_figure_as_it_was(history in histories(), line in histories::line()) {
        let mut it = history.read();
        let before = everything(&it.books(), &it.shop());
        let end = it.end();
        let written = it.lines.len();
        history.then(&mut it, &line);
        let ids: Vec<Id> = it.lines[written..]
            .iter()
            .map(|line| crate::journal::line::read(line).expect("reads").id)
            .collect();
        for change in crate::journal::act::undo(&it.journal, &ids) {
            it.write(change);
        }
        let shop = it.shop();
        let after = everything(&Books::close(&shop, end), &shop);
        prop_assert_eq!(after, before);
    }
}

proptest! {
    #[test]
    fn an_act_folded_in_is_the_fold_of_all(history in histories(), line in histories::line()) {
        let mut it = history.read();
        let mut shop = it.shop();
        let written = it.lines.len();
        history.then(&mut it, &line);
        shop = follows(&it, &shop, written)?;
        // Taken back, and so on: the last lines of the history are struck out one by one.
        for line in it.lines.clone().iter().rev().take(6) {
            let entry = crate::journal::line::read(line).expect("reads").entry;
            let written = it.lines.len();
            it.write(crate::journal::Change::strike(entry));
            shop = follows(&it, &shop, written)?;
        }
    }
}

/// Every draw of a closed build and what is frozen of it.
fn frozen(it: &Fixture) -> Vec<(Id, Parts)> {
    let (shop, last) = (it.shop(), it.zone.day(it.end()));
    let closed = shop.builds.keys().filter_map(|build| shop.last_state(*build, last));
    let all = closed
        .flat_map(|it| &it.frozen)
        .map(|it| (it.draw, Parts::stored(&it.fetched).plus(Parts::stored(&it.reclaimed))));
    all.collect()
}

/// Those of them that were not struck out.
fn there(books: &Books, draws: &[(Id, Parts)]) -> Vec<(Id, Parts)> {
    draws.iter().filter(|(draw, _)| books.stock.by_entry.contains_key(draw)).copied().collect()
}

/// What these draws cost now, what came back of them taken off.
fn still(books: &Books, draws: &[(Id, Parts)]) -> Vec<(Id, Parts)> {
    let rows: Vec<usize> = (0..books.stock.rows.len()).collect();
    let net = books.stock.net(&rows);
    let of = |draw: Id| net.iter().find(|(row, _)| row.entry() == draw).map(|(_, parts)| (draw, *parts));
    draws.iter().filter_map(|(draw, _)| of(*draw)).collect()
}

/// The shop after the lines from `written` on, once folded in and once folded anew: they must be one.
fn follows(it: &Fixture, before: &Shop, written: usize) -> Result<Shop, TestCaseError> {
    let lines = it.lines.iter().skip(written);
    let entries: Vec<Id> = lines.map(|line| crate::journal::line::read(line).expect("reads").entry).collect();
    let after = before.after(&it.journal, &entries);
    prop_assert_eq!(format!("{after:?}"), format!("{:?}", it.shop()));
    Ok(after)
}

/// By place and by species the same lots come to the same, and every sum adds up.
fn across_adds_up(books: &Books) -> Result<(), TestCaseError> {
    let by = [By::Source, By::Species].map(|by| books.across(by));
    for across in by.iter().flatten() {
        for root in across.roots() {
            adds_up(root)?;
            shown_adds_up(root, root, &mut super::Path { steps: vec![root.rule.step()] }, 2)?;
        }
    }
    let [Some(by_source), Some(by_species)] = by else { return Ok(()) };
    prop_assert_eq!(by_source.at_rate.money(), by_species.at_rate.money());
    prop_assert_eq!(by_source.paid_an_hour.money(), by_species.paid_an_hour.money());
    Ok(())
}

/// Every sheet there is.
fn everything(books: &Books, shop: &Shop) -> (Vec<BuildCost>, Vec<LotBook>, Vec<ShelfLine>) {
    let builds = shop.builds.keys().map(|id| books.build_cost(*id));
    let lots = shop.lots.keys().filter_map(|id| books.lot(*id));
    (builds.chain([books.shop_cost()]).collect(), lots.collect(), books.shelf())
}

/// What is left when a draw keeps its cost is shared out anew, and a remainder may fall to another line. What came back
/// of a draw is worked out from what stayed: the less stayed, the more often half a millionth of it.
fn a_few_millionths(books: &Books, one: Money, other: Money) -> bool {
    let came_back = books.stock.rows.iter().filter(|row| row.frozen && row.net() > Quantity::ZERO);
    let times = came_back.fold(0, |sum, row| sum + row.back.micros() / row.net().micros());
    one.minus(other).micros().abs() <= 20 + times
}

fn sum(parts: impl Iterator<Item = Parts>) -> Parts {
    parts.fold(Parts::ZERO, Parts::plus)
}

fn each_lot_adds_up(books: &Books) -> Result<(), TestCaseError> {
    for (id, lot) in &books.stock.lots {
        let source = crate::journal::kinds::Source::Lot(*id);
        let rows: Vec<_> = books.stock.rows_of(source).collect();
        let drawn = sum(rows.iter().map(|row| row.parts));
        prop_assert_eq!(drawn.plus(lot.shelf()).plus(lot.losses()), lot.cost());
        let net = rows
            .iter()
            .filter(|row| row.returns.is_none())
            .fold(Quantity::ZERO, |sum, row| sum.plus(row.net()));
        prop_assert_eq!(net, lot.drawn);
        if let (Some(rough), false) = (lot.facts.rough, lot.found.empty) {
            let told = lot.found.good.plus(lot.found.culled).plus(lot.found.unsorted(Some(rough)));
            let known = lot.found.good.plus(lot.found.culled).plus(lot.found.lost_unsorted);
            prop_assert_eq!(told, rough.max(known));
        }
        prop_assert!(lot.left().is_none_or(|left| !left.is_negative()));
        let book = books.lot(*id).expect("there");
        the_chain_loses_nothing(&book)?;
    }
    Ok(())
}

/// Gathered is what was lost, what waits and what is in the piece; each link is the one before less what stayed.
fn the_chain_loses_nothing(book: &LotBook) -> Result<(), TestCaseError> {
    let mut before = book.chain.links.first().expect("five").quantity;
    for link in &book.chain.links {
        for quantity in [link.quantity, link.lost, link.mishap, link.waits] {
            prop_assert!(!quantity.is_negative(), "{:?}", book.chain);
        }
        let stayed = link.lost.plus(link.mishap).plus(link.waits);
        prop_assert_eq!(link.quantity.plus(stayed), before);
        before = link.quantity;
    }
    prop_assert_eq!(before, book.board.drawn);
    prop_assert_eq!(book.chain.cost.money(), book.cost.money());
    if let Some(rough) = book.board.gathered {
        let gathered = book.chain.links.first().expect("five").quantity;
        prop_assert_eq!(gathered, rough.plus(book.chain.more));
    }
    Ok(())
}

/// How much of all items was drawn, and how much is left.
fn drawn_and_left(books: &Books, shop: &Shop) -> Quantity {
    let rows = |id: &Id| books.stock.rows_of(crate::journal::kinds::Source::Item(*id));
    let draws = shop.items.keys().flat_map(rows).filter(|row| row.returns.is_none());
    let drawn = draws.fold(Quantity::ZERO, |sum, row| sum.plus(row.net()));
    books.stock.items.values().fold(drawn, |sum, item| sum.plus(item.quantity))
}

fn each_item_adds_up(books: &Books, shop: &Shop) -> Result<(), TestCaseError> {
    let items = books.stock.items.iter();
    let held = sum(items.map(|(id, item)| {
        let source = crate::journal::kinds::Source::Item(*id);
        let drawn = sum(books.stock.rows_of(source).map(|row| row.parts));
        drawn.plus(item.value).plus(item.losses()).plus(item.unplaced)
    }));
    let pooled = shop.lots.values().filter(|lot| lot.item.is_some());
    let came = pooled.flat_map(|lot| books.lot_lines(lot)).map(|line| line.parts);
    prop_assert_eq!(held, sum(came));
    let held = books.on_the_shelf(shop);
    adds_up(&held)?;
    let cash = |parts: Parts| parts.money().plus(parts.paid_labour());
    let lots = books.stock.lots.values().map(|lot| cash(lot.shelf()));
    let shelves = lots.chain(books.stock.items.values().map(|item| cash(item.value.plus(item.unplaced))));
    prop_assert_eq!(held.money().unwrap_or_default(), shelves.fold(Money::ZERO, Money::plus));
    let lost = sum(books.losses().into_iter().map(|(_, parts)| parts));
    let told = books.stock_losses();
    adds_up(&told)?;
    prop_assert_eq!(told.money().unwrap_or_default(), lost.total());
    for (id, item) in &books.stock.items {
        let source = crate::journal::kinds::Source::Item(*id);
        let came = shop.lots.values().filter(|lot| lot.item == Some(*id)).fold(Quantity::ZERO, |sum, lot| {
            let culled = shop.sorts.iter().filter(|sort| sort.lot == lot.entry());
            let culled = culled.fold(Quantity::ZERO, |sum, sort| sum.plus(sort.culled));
            sum.plus(lot.rough.unwrap_or_default().minus(culled).max(Quantity::ZERO))
        });
        let rows = books.stock.rows_of(source).filter(|row| row.returns.is_none());
        let drawn = rows.fold(Quantity::ZERO, |sum, row| sum.plus(row.net()));
        let gone = item.written_off.iter().fold(Quantity::ZERO, |sum, it| sum.plus(it.quantity));
        prop_assert_eq!(drawn.plus(gone).plus(item.quantity), came);
        let layers = item.layers.iter().fold(Quantity::ZERO, |sum, (_, quantity)| sum.plus(*quantity));
        prop_assert_eq!(layers, item.quantity.max(Quantity::ZERO));
        let average = Formula::on(shop, shop.zone.day(books.as_of)) == Formula::MovingAverage;
        prop_assert!(!average || item.layers.len() <= 1);
    }
    Ok(())
}

/// What was ever paid, worked, driven or supplied.
fn all_in(books: &Books, shop: &Shop) -> Parts {
    let ledgers = &books.ledgers;
    let labour = ledgers.labour.iter().map(|row| row.parts());
    let trips = ledgers.trips.iter().map(|row| row.parts());
    let expenses = ledgers.expenses.iter().map(|row| row.parts());
    let prices = shop.lots.values().filter_map(|lot| books.lot_lines(lot).first().map(|line| line.parts));
    let overhead = ledgers.labour.iter().map(|row| row.overhead.parts());
    let tools = ledgers.tools.rows.iter().map(|row| row.parts());
    sum(labour.chain(trips).chain(expenses).chain(prices).chain(overhead).chain(tools))
}

/// Where it all is now.
fn all_out(books: &Books, shop: &Shop) -> Parts {
    let bearers = books.ledgers.bearers();
    let borne = bearers.filter(|bearer| match bearer {
        Bearer::Build(build) => !shop.builds.contains_key(build),
        Bearer::Lot(lot) => !shop.lots.contains_key(lot),
        Bearer::Shop => true,
    });
    // A build may bear nothing but its share of what another made for both.
    let borne = borne.chain(shop.builds.keys().copied().map(Bearer::Build));
    let borne = sum(borne.map(|bearer| books.cost_of(bearer).parts));
    let shelves = sum(books.stock.lots.values().map(|lot| lot.shelf().plus(lot.losses())));
    let items = sum(books.stock.items.values().map(|it| it.value.plus(it.losses()).plus(it.unplaced)));
    let circles = books.stock.rows.iter().filter(|row| books.stock.left_out.contains(&row.entry()));
    let still_to_be_borne = sum(books.series.iter().map(|series| series.rest));
    // What closed builds keep of lots that were struck out.
    let gone = sum(books.stock.gone.iter().map(|(_, line)| line.parts));
    sum([borne, shelves, items, sum(circles.map(|row| row.parts)), still_to_be_borne, gone].into_iter())
}

fn adds_up(statement: &Statement) -> Result<(), TestCaseError> {
    for part in &statement.parts {
        if let PartOf::Statement(below) = &part.of {
            adds_up(below)?;
            // What a part lacks or has odd, its parent says too.
            prop_assert!(below.gaps.iter().all(|gap| statement.gaps.contains(gap)));
            prop_assert!(below.flags.iter().all(|flag| statement.flags.contains(flag)));
        }
    }
    match statement.value {
        // One item is a sum divided.
        Some(Value::Money(_)) if matches!(statement.rule, Rule::Item { .. }) => {}
        Some(Value::Money(money)) => {
            let parts = statement.parts.iter().filter_map(Part::signed_money);
            prop_assert_eq!(money, parts.fold(Money::ZERO, Money::plus), "{:?}", statement.rule);
        }
        Some(Value::PerHour(_)) => {
            let divides = matches!(
                statement.rule,
                Rule::PaidAnHour { .. }
                    | Rule::AcrossAnHour { .. }
                    | Rule::HourEarned { .. }
                    | Rule::BuildPaidAnHour { .. }
            );
            prop_assert!(divides);
        }
        Some(Value::Hours(_)) => {}
        None => prop_assert!(!statement.gaps.is_empty(), "no value and no word why: {:?}", statement.rule),
    }
    Ok(())
}

/// The shown parts of every level make up what the level shows, opened by its address from the root.
fn shown_adds_up(
    root: &Statement,
    at: &Statement,
    path: &mut super::Path,
    minor: u8,
) -> Result<(), TestCaseError> {
    let levels = present::open(root, path, minor).expect("its own address");
    let level = levels.last().expect("a level");
    let sums = !matches!(
        at.rule,
        Rule::PaidAnHour { .. }
            | Rule::AcrossAnHour { .. }
            | Rule::HourEarned { .. }
            | Rule::Item { .. }
            | Rule::BuildPaidAnHour { .. }
    );
    if let (true, Some(shown), false) = (sums, level.shown, at.parts.is_empty()) {
        let number = |text: String| text.replace('.', "").parse::<i128>().expect("a number");
        let parts = level.statement.parts.iter().zip(&level.parts);
        let sum: i128 = parts
            .filter_map(|(part, shown)| {
                let sign = if part.sign == super::Sign::Plus { 1 } else { -1 };
                Some(sign * number((*shown)?.text()))
            })
            .sum();
        prop_assert_eq!(sum, number(shown.text()), "{}", path);
    }
    for below in at.parts.iter().filter_map(Part::statement) {
        path.steps.push(below.rule.step());
        shown_adds_up(root, below, path, minor)?;
        path.steps.pop();
    }
    Ok(())
}

impl histories::History {
    fn then(&self, it: &mut Fixture, line: &histories::Line) {
        let said = line.say(usize::MAX, &self.draws());
        it.add(&said);
    }
}
