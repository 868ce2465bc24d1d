//! Lots drawn by name: specific identification, and the two pools of a salvaged one.
//!
//! Fetched is spread over the usable quantity U = sorted good + unsorted × expected yield, never less than
//! was drawn; reclaimed over what is sorted good so far, never less than was drawn. Bought, supplied and
//! offcut lots are usable whole but for what was culled, and both pools go over U. A lot found empty: U is
//! what was drawn. What was lost in store stays in both, as if it had been drawn. All draws and the shelf share each
//! part by largest remainder, ties by entry id, so nothing of a lot is lost. What nobody can take any more is a loss of
//! the shop; so is what was counted short, thrown out, given away or lost in store, at the unit cost of the rest. Counted
//! over: more was there, as where more was drawn than came.
//! Source: IAS 2 paragraph 23 (specific identification); pools: our own rule, DEVELOPERS.md § Salvage.

use super::{
    DrawRow, Found, Frozen, LotLine, Mishap, Pool,
    frozen::{AsClosed, CameBack},
    written_off::{Seen, Why, WrittenOff},
};
use crate::measure::InOrder;
use crate::{
    costing::{CostKind, Flag, Gap, Parts},
    journal::{
        kinds::{Origin, Source},
        shop::Lot,
    },
    measure::{Quantity, Ratio, fixed},
};

/// Where the expected yield comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YieldFrom {
    /// Typed with the lot.
    Typed,
    /// Median of so many of the maker's own sorted lots from the same place.
    History {
        /// How many.
        lots: usize,
    },
    /// What is sorted of the lot itself.
    Itself,
    /// The lot came ready to use.
    Whole,
}

/// The cost of a lot, where it went, and how much is left.
#[derive(Clone, Debug)]
pub(crate) struct LotAccount {
    /// As the fold read it.
    pub facts: Lot,
    pub kind: CostKind,
    pub found: Found,
    /// None where it can't be said, or where nothing is left to expect.
    pub expected: Option<(Ratio, YieldFrom)>,
    /// What stays drawn of it.
    pub drawn: Quantity,
    /// Counted beyond what the books said.
    pub more: Quantity,
    /// Counted short, thrown out, given away.
    pub seen_gone: Quantity,
    /// All that is gone without a build, as it weighs in the fetched pool and in the reclaimed one; line by line too.
    pub gone: [Quantity; 2],
    pub weights: Vec<[Quantity; 2]>,
    pub written_off: Vec<WrittenOff>,
    /// U; none: a gap.
    pub usable: Option<Quantity>,
    /// What the reclaimed pool is spread over; none: nothing sorted or drawn yet.
    pub sorted: Option<Quantity>,
    pub fetched: Parts,
    pub reclaimed: Parts,
    /// What is left of both when draws of closed builds have kept theirs.
    pub rest: Rest,
    /// What is still on the shelf, of either pool.
    pub shelf_fetched: Parts,
    pub shelf_reclaimed: Parts,
    /// What nobody can take any more.
    pub lost: Parts,
    /// That is all there is, or all that closed builds left.
    pub all_lost: bool,
    pub gaps: Vec<Gap>,
    pub flags: Vec<Flag>,
}

/// Pools, and what they go over, with draws of closed builds out of both.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Rest {
    pub fetched: Parts,
    pub reclaimed: Parts,
    pub usable: Option<Quantity>,
    pub sorted: Option<Quantity>,
    pub drawn: Quantity,
    /// As in the account.
    pub gone: [Quantity; 2],
}

impl LotAccount {
    /// Everything that it cost.
    pub(crate) fn cost(&self) -> Parts {
        self.fetched.plus(self.reclaimed)
    }

    /// What is still on the shelf.
    pub(crate) fn shelf(&self) -> Parts {
        self.shelf_fetched.plus(self.shelf_reclaimed)
    }

    /// What nobody can take any more, what was written off included.
    pub(crate) fn losses(&self) -> Parts {
        self.written_off.iter().fold(self.lost, |sum, it| sum.plus(it.parts))
    }

    /// Usable, not drawn and not gone; none where it can't be said.
    pub(crate) fn left(&self) -> Option<Quantity> {
        let [gone, _] = self.gone;
        self.usable.map(|usable| usable.minus(self.drawn).minus(gone))
    }
}

/// Opens the account of a lot: quantities, pools, gaps. `drawn`: what stays drawn.
pub(crate) fn open(
    facts: &Lot,
    lines: &[LotLine],
    (found, seen): (Found, Seen),
    drawn: Quantity,
    history: Option<(Ratio, usize)>,
) -> LotAccount {
    let lot = facts.entry();
    let pool = |pool: Pool| {
        lines.iter().filter(|line| line.pool == pool).fold(Parts::ZERO, |sum, line| sum.plus(line.parts))
    };
    let unsorted = found.unsorted(facts.rough);
    let expected = expected(facts, found, unsorted, history);
    let could_be = could_be(facts, found, unsorted, expected).map(|it| it.plus(seen.more));
    let weights = weights(facts, found, &seen, expected);
    let gone = weights
        .iter()
        .fold([Quantity::ZERO; 2], |[usable, sorted], [one, other]| [usable.plus(*one), sorted.plus(*other)]);
    let [out, out_sorted] = gone.map(|gone| drawn.plus(gone));
    let usable = if found.empty { Some(out) } else { could_be.map(|it| it.max(out)) };
    let sorted = sorted(facts, found, (seen.more, out_sorted), usable);
    let mut account = LotAccount {
        kind: CostKind::of_stock(facts.purpose, facts.origin),
        facts: facts.clone(),
        found,
        expected,
        drawn,
        more: seen.more,
        seen_gone: seen.quantity(),
        gone,
        weights,
        written_off: written_off(seen),
        usable,
        sorted,
        fetched: pool(Pool::Fetched),
        reclaimed: pool(Pool::Reclaimed),
        rest: Rest::default(),
        shelf_fetched: Parts::ZERO,
        shelf_reclaimed: Parts::ZERO,
        lost: Parts::ZERO,
        all_lost: false,
        gaps: lines.iter().filter_map(|line| line.gap).collect(),
        flags: Vec::new(),
    };
    if usable.is_none() {
        let unknown = facts.rough.is_none();
        account.gaps.push(if unknown { Gap::NoQuantity { entry: lot } } else { Gap::NoYield { lot } });
    }
    if !found.empty && could_be.is_some_and(|it| it < out) {
        account.flags.push(Flag::Overdrawn { lot });
    }
    match expected {
        Some((_, YieldFrom::History { lots })) => account.flags.push(Flag::YieldFromHistory { lot, lots }),
        Some((_, YieldFrom::Itself)) => account.flags.push(Flag::YieldFromItself { lot }),
        Some((_, YieldFrom::Typed | YieldFrom::Whole)) | None => {}
    }
    account
}

/// Shares both pools among the draws and the shelf; writes the rows. Draws of closed builds keep what they cost, and the
/// rest goes over what they left.
pub(crate) fn share_out(account: &mut LotAccount, rows: &mut [DrawRow], of_lot: &[usize], frozen: &Frozen) {
    // Ties go by entry id, so that two phones agree.
    let mut draws: Vec<usize> =
        of_lot.iter().copied().filter(|at| rows.get(*at).is_some_and(|row| row.returns.is_none())).collect();
    draws.order_by_key(|at| rows.get(*at).map(DrawRow::entry));
    let mut kept = AsClosed::default();
    let mut live: Vec<usize> = Vec::with_capacity(draws.len());
    for at in draws {
        let Some(row) = rows.get_mut(at) else { continue };
        let Some(it) = frozen.get(row.entry()).copied() else {
            live.push(at);
            continue;
        };
        kept.quantity = kept.quantity.plus(row.net());
        kept.fetched = kept.fetched.plus(it.fetched);
        kept.reclaimed = kept.reclaimed.plus(it.reclaimed);
        (row.parts, row.reclaimed) = (it.fetched.plus(it.reclaimed), it.reclaimed);
        (row.known, row.frozen) = (true, true);
        tell(row, account);
    }
    let mut weights: Vec<i128> =
        live.iter().map(|at| rows.get(*at).map_or(0, |row| row.net().micros())).collect();
    account.rest = Rest {
        fetched: account.fetched.minus(kept.fetched),
        reclaimed: account.reclaimed.minus(kept.reclaimed),
        usable: account.usable.map(|it| it.minus(kept.quantity)),
        sorted: account.sorted.map(|it| it.minus(kept.quantity)),
        drawn: account.drawn.minus(kept.quantity),
        gone: account.gone,
    };
    let rest = account.rest;
    let [gone_usable, gone_sorted] = rest.gone;
    let draws = weights.len();
    weights.extend(account.weights.iter().map(|[usable, _]| usable.micros()));
    let fetched = Spread::of(rest.fetched, rest.usable, rest.drawn.plus(gone_usable), &mut weights);
    weights.truncate(draws);
    weights.extend(account.weights.iter().map(|[_, sorted]| sorted.micros()));
    let reclaimed = Spread::of(rest.reclaimed, rest.sorted, rest.drawn.plus(gone_sorted), &mut weights);
    // Stock that no one will ever draw: all culled, found empty with nothing drawn, or all drawn by closed builds.
    if rest.usable.is_some_and(|usable| usable.is_zero()) {
        account.lost = rest.fetched.plus(rest.reclaimed);
        account.all_lost = true;
    } else {
        (account.shelf_fetched, account.shelf_reclaimed) = (fetched.shelf, reclaimed.shelf);
    }
    let known = account.usable.is_some();
    let gaps = account.gaps.clone();
    for (place, gone) in account.written_off.iter_mut().enumerate() {
        let at = live.len().saturating_add(place);
        let share = |spread: &Spread| spread.draws.get(at).copied().unwrap_or_default();
        gone.parts = share(&fetched).plus(share(&reclaimed));
        gone.known = known || !gone.parts.is_zero();
        gone.gaps.clone_from(&gaps);
    }
    for (place, at) in live.iter().enumerate() {
        let share = |spread: &Spread| spread.draws.get(place).copied().unwrap_or_default();
        let net = share(&fetched).plus(share(&reclaimed));
        if let Some(row) = rows.get_mut(*at) {
            (row.parts, row.reclaimed) = (net, share(&reclaimed));
            row.known = row.quantity.is_some() && (known || !net.is_zero());
            tell(row, account);
        }
    }
    let mut came_back = CameBack::default();
    for at in of_lot {
        give_back(account, rows, *at, frozen, &mut came_back);
    }
}

/// A pool divided: a share for each draw and for what is gone, the rest on the shelf.
struct Spread {
    draws: Vec<Parts>,
    shelf: Parts,
}

impl Spread {
    fn of(pool: Parts, over: Option<Quantity>, out: Quantity, weights: &mut Vec<i128>) -> Spread {
        let Some(over) = over.filter(|over| !over.is_zero() && !pool.is_zero()) else {
            return Spread { draws: Vec::new(), shelf: pool };
        };
        weights.push(over.minus(out).micros());
        let mut draws = pool.allocate(weights);
        weights.pop();
        let shelf = draws.pop().unwrap_or_default();
        Spread { draws, shelf }
    }
}

/// What comes back of a draw comes back at its unit cost: the draw's row shows all that was taken, the
/// return's row what it gave back, and both together what stays drawn.
fn give_back(
    account: &LotAccount,
    rows: &mut [DrawRow],
    at: usize,
    frozen: &Frozen,
    came_back: &mut CameBack,
) {
    let drawn = rows.get(at).and_then(|row| rows.get(row.returns?)).filter(|draw| draw.frozen);
    let closed = drawn.and_then(|draw| Some(frozen.get(draw.entry())?.gave_back(draw)));
    let Some(row) = rows.get_mut(at) else { return };
    let Some(draw) = row.returns else { return };
    let quantity = row.quantity.unwrap_or_default();
    if let Some(closed) = closed {
        // What had come back by then came back at what it cost; later it comes back at nothing.
        let (_, parts) = came_back.of(draw, quantity, closed);
        (row.parts, row.known, row.frozen) = (parts.negated(), true, true);
        tell(row, account);
        if let Some(draw) = rows.get_mut(draw) {
            draw.parts = draw.parts.plus(parts);
        }
        return;
    }
    let unit = |pool: Parts, over: Option<Quantity>| {
        over.filter(|over| !over.is_zero()).map_or(Parts::ZERO, |over| pool.share(quantity, over))
    };
    let rest = account.rest;
    let parts = unit(rest.fetched, rest.usable).plus(unit(rest.reclaimed, rest.sorted));
    row.parts = parts.negated();
    row.known = account.usable.is_some() || !parts.is_zero();
    tell(row, account);
    if let Some(draw) = rows.get_mut(draw) {
        draw.parts = draw.parts.plus(parts);
        draw.known |= draw.quantity.is_some() && !draw.parts.is_zero();
    }
}

fn tell(row: &mut DrawRow, account: &LotAccount) {
    row.gaps.extend_from_slice(&account.gaps);
    row.flags.extend_from_slice(&account.flags);
    row.kind = account.kind;
}

/// The share of what is still unsorted that is expected to be usable.
fn expected(
    facts: &Lot,
    found: Found,
    unsorted: Quantity,
    history: Option<(Ratio, usize)>,
) -> Option<(Ratio, YieldFrom)> {
    if unsorted.is_zero() {
        return None;
    }
    if facts.origin != Origin::Salvaged {
        return Some((Ratio::ONE, YieldFrom::Whole));
    }
    let typed = facts.expected_yield.map(|share| (share, YieldFrom::Typed));
    let own = history.map(|(share, lots)| (share, YieldFrom::History { lots }));
    typed.or(own).or_else(|| found.yielded().map(|share| (share, YieldFrom::Itself)))
}

/// How each line that is gone weighs in either pool. Unsorted timber that was lost counts by what was expected of it in
/// what was fetched, and had no share yet in what was reclaimed.
fn weights(
    facts: &Lot,
    found: Found,
    seen: &Seen,
    expected: Option<(Ratio, YieldFrom)>,
) -> Vec<[Quantity; 2]> {
    let share = expected.map_or(Ratio::ZERO, |(share, _)| share);
    let one_pool = found.empty || facts.origin != Origin::Salvaged;
    let mishap = |it: &Mishap| {
        let to_come = fixed::mul_div(it.unsorted.micros(), share.micros(), fixed::SCALE);
        let usable = it.good.plus(Quantity::from_micros(to_come.unwrap_or_default()));
        [usable, if one_pool { usable } else { it.good }]
    };
    let looks = seen.gone.iter().map(|gone| [gone.quantity; 2]);
    looks.chain(seen.mishaps.iter().map(mishap)).collect()
}

/// The lines, in the order of their weights; their costs come later.
fn written_off(seen: Seen) -> Vec<WrittenOff> {
    let mishap =
        |it: Mishap| WrittenOff::of(it.entry, Why::ThrownOut, it.good.plus(it.unsorted), Parts::ZERO);
    seen.gone.into_iter().chain(seen.mishaps.into_iter().map(mishap)).collect()
}

/// U before anyone looks at what was drawn.
fn could_be(
    facts: &Lot,
    found: Found,
    unsorted: Quantity,
    expected: Option<(Ratio, YieldFrom)>,
) -> Option<Quantity> {
    let known = facts.rough.is_some() || !found.good.is_zero() || !found.culled.is_zero();
    if !known {
        return None;
    }
    if unsorted.is_zero() {
        return Some(found.good);
    }
    let (share, _) = expected?;
    let to_come = fixed::mul_div(unsorted.micros(), share.micros(), fixed::SCALE)?;
    Some(found.good.plus(Quantity::from_micros(to_come)))
}

/// What the reclaimed pool goes over.
fn sorted(
    facts: &Lot,
    found: Found,
    (more, out): (Quantity, Quantity),
    usable: Option<Quantity>,
) -> Option<Quantity> {
    if found.empty || facts.origin != Origin::Salvaged {
        return usable;
    }
    let sorted = found.good.plus(more).max(out);
    (!sorted.is_zero()).then_some(sorted)
}

/// The source that draws of a lot by itself name.
pub(crate) fn source(lot: &Lot) -> Source {
    Source::Lot(lot.entry())
}
