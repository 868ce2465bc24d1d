//! A hint where a build or a lot stands above what it will fetch.
//!
//! A build: money used up and money still to come, less what came in and is still expected. A lot: what is left of it in
//! money, less the same thing new (what it would cost to get again). In money and paid labour only, as the maker's own
//! books carry it; own time is in the outlook and in the saving. Where nothing is known of what it will fetch, nothing
//! is said. Worked example: 120 used up, 30 to come, 100 expected: 50 above. Source: IAS 2 paragraphs 9 (the lower of
//! cost and what it will fetch), 6 (less what completing and selling costs) and 32 (of materials, the cost of getting
//! them again is often the best measure); that it is a hint and not a write-down: our own rule, DEVELOPERS.md § Why.

use super::{
    Books, BuildCost, Part, PartOf, Rule, Statement, Value, Working,
    outlook::ToCome,
    parts::Lens,
    salvage::bought_instead_of,
    stock::{LotAccount, rows},
};
use crate::{journal::Id, measure::Money};

/// How far a build stands above what it will fetch. None: it doesn't, or nobody knows what it will.
pub(crate) fn of_build(books: &Books, build: Id, cost: &BuildCost) -> Option<Statement> {
    if !cost.earned.kept {
        return None;
    }
    let mut parts = vec![Part::plus(cost.used_up()?.clone())];
    if let Some(to_come) = books.to_come.get(&build).and_then(money_to_come) {
        parts.push(Part::plus(to_come));
    }
    parts.push(Part::minus(cost.earned.net.clone()));
    parts.push(Part::minus(cost.earned.expected.clone()));
    above(Statement::sum(Rule::AboveFetch, parts, Vec::new(), Vec::new()))
}

/// Paid people and materials.
fn money_to_come(to_come: &ToCome) -> Option<Statement> {
    let (labour, materials) = to_come.money();
    let paid = labour.iter().filter(|part| match &part.of {
        PartOf::Entry { working: Working::Hours { paid, .. }, .. } => *paid,
        PartOf::Entry { .. } | PartOf::Statement(_) => false,
    });
    let parts: Vec<Part> = paid.chain(materials).cloned().collect();
    (!parts.is_empty()).then(|| Statement::sum(Rule::ToComeMoney, parts, Vec::new(), Vec::new()))
}

/// How far what is left of a lot stands above the same thing new.
pub(crate) fn of_lot(lot: &LotAccount) -> Option<Statement> {
    let id = lot.facts.entry();
    let left = lot.left().filter(|left| !left.is_zero() && !left.is_negative())?;
    let parts = lot.shelf();
    let worth = parts.through(Lens::Cash);
    let working = rows::working(Some(left), lot.facts.unit, worth, parts.own_hours());
    let new = bought_instead_of(lot, left)?;
    let parts = vec![Part::entry(id, Some(Value::Money(worth)), working), Part::minus(new)];
    above(Statement::sum(Rule::AboveNew { lot: id }, parts, Vec::new(), Vec::new()))
}

fn above(statement: Statement) -> Option<Statement> {
    let above = statement.money().is_some_and(|it| it > Money::ZERO);
    above.then_some(statement)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use crate::{costing::Statement, fixture::fixture};

    #[track_caller]
    fn check_build(lines: &str, want: &str) {
        let it = fixture(&format!("person Ana 20\nperson Pia 25 paid\nbuild trays\n{lines}"));
        let cost = it.books().build_cost(it.id("trays"));
        let told = cost.above.as_ref().and_then(Statement::money).map(|it| it.shown(2));
        assert_eq!(told.unwrap_or_default(), want, "{lines}");
    }

    #[test]
    fn a_build_that_takes_more_money_than_it_brings_says_by_how_much() {
        let wood = "expense wood 120 for trays";
        let felt = "step sand-them trays sand who Ana hours 2,2,2\nbuy-words felt for trays price 30";
        let sale = |amount| format!("income sale piece for trays expected {amount}");
        check_build(&format!("{wood}\n{felt}"), "");
        check_build(&format!("{wood}\n{felt}\n{}", sale(100)), "50.00");
        check_build(&format!("{wood}\n{felt}\n{}", sale(150)), "");
        check_build(&format!("{wood}\n{felt}\n{}", sale(151)), "");
    }

    #[test]
    fn own_time_does_not_count_and_paid_time_does() {
        let sale = "income sale piece for trays expected 40";
        check_build(&format!("stretch Ana sand min 600 for trays\n{sale}"), "");
        check_build(&format!("stretch Pia sand min 120 for trays\n{sale}"), "10.00");
        check_build(&format!("step sand-them trays sand who Pia hours 2,2,2\n{sale}"), "10.00");
    }

    #[track_caller]
    fn check_lot(lot: &str, want: &str) {
        let it = fixture(&format!("build bench\n{lot}\n draw 4 oak for bench"));
        let book = it.books().lot(it.id("oak")).unwrap();
        let told = book.above.as_ref().and_then(Statement::money).map(|it| it.shown(2));
        assert_eq!(told.unwrap_or_default(), want, "{lot}");
    }

    #[test]
    fn a_lot_that_stands_above_the_same_thing_new_says_by_how_much() {
        // 6 of 10 left, at 10 and at 7 new.
        check_lot("lot oak bought 10 paid 100 new 7", "18.00");
        check_lot("lot oak bought 10 paid 70 new 7", "");
        check_lot("lot oak bought 10 paid 100", "");
    }
}
