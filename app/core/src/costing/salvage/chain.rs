//! The yield chain of a salvaged lot: gathered, nails out, sorted, milled, in the piece.
//!
//! What reaches a link is what reached the one before, less what was lost on the way and what has not gone on yet. All
//! links together: gathered = lost + waiting + in the piece. Beside each link the hours and the cost of getting there;
//! they make up the hours and the cost of the lot. By stage: hauling is gathering, reclaiming pulls nails, the mill and
//! flattening mill; all else of a lot's own work is sorting. Source: our own rule, DEVELOPERS.md § Salvage.
//! Not here: what a cull does to the cost (`stock::found`).

use crate::{
    costing::{
        Books, Hours, Part, Rule, Statement,
        build::{Lines, sum_of},
        parts::Lens,
        stock::{LotAccount, LotLine, Pool},
    },
    journal::{Id, kinds::Role, stages::standing_id},
    measure::{Quantity, Ratio},
};

/// A link of the chain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Reached {
    /// As it came.
    Gathered,
    /// Nails out.
    NailsOut,
    /// Sorted as good.
    Sorted,
    /// Ready to use.
    Milled,
    /// Drawn.
    InThePiece,
}

impl Reached {
    /// From the yard to the piece.
    pub const ALL: [Reached; 5] =
        [Reached::Gathered, Reached::NailsOut, Reached::Sorted, Reached::Milled, Reached::InThePiece];

    /// Its name in an address.
    pub fn code(self) -> &'static str {
        match self {
            Reached::Gathered => "gathered",
            Reached::NailsOut => "nails-out",
            Reached::Sorted => "sorted",
            Reached::Milled => "milled",
            Reached::InThePiece => "piece",
        }
    }
}

/// One link: quantities in the lot's unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// Which.
    pub at: Reached,
    /// What got here.
    pub quantity: Quantity,
    /// Share of all that was gathered; none: nothing was.
    pub share: Option<Ratio>,
    /// Thrown out on the way here, or found missing.
    pub lost: Quantity,
    /// Gone on the way here without a build: lost in a flood, thrown out, given away, counted short.
    pub mishap: Quantity,
    /// Not there yet: unsorted before the sorting, on the shelf before the piece.
    pub waits: Quantity,
    /// What getting here cost, down to the lines of the lot; its rule has the hours.
    pub cost: Statement,
    /// Everybody's hours in that.
    pub hours: Hours,
}

/// The chain of a lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Chain {
    /// From the yard to the piece.
    pub links: Vec<Link>,
    /// There was more than was written down as gathered.
    pub more: Quantity,
    /// What all links cost: what the lot cost.
    pub cost: Statement,
}

/// What was lost on the way to a link, as expected and not, and what waits before it.
type Step = [Quantity; 3];

pub(super) fn chain(books: &Books, lot: &LotAccount) -> Chain {
    let (steps, drawn) = steps(lot);
    let all = |steps: &[(Reached, Step)]| {
        steps.iter().flat_map(|(_, step)| step).fold(drawn, |sum, it| sum.plus(*it))
    };
    let gathered = all(&steps);
    let lines = books.lot_lines(&lot.facts);
    let mut quantity = gathered;
    let links = steps.into_iter().map(|(at, [lost, mishap, waits])| {
        quantity = quantity.minus(lost).minus(mishap).minus(waits);
        let (cost, hours) = cost(books, lot, &lines, at);
        let share = quantity.over(gathered).and_then(|it| Ratio::share(it.to_decimal()));
        Link { at, quantity, share, lost, mishap, waits, cost, hours }
    });
    let links: Vec<Link> = links.collect();
    let parts = links.iter().map(|link| Part::plus(link.cost.clone())).collect();
    let rule = Rule::ChainCost { lot: lot.facts.entry() };
    Chain {
        links,
        more: gathered.minus(lot.facts.rough.unwrap_or(gathered)).max(Quantity::ZERO),
        cost: Statement::sum(rule, parts, lot.gaps.clone(), lot.flags.clone()),
    }
}

/// The steps in their order, and what was drawn.
fn steps(lot: &LotAccount) -> ([(Reached, Step); 5], Quantity) {
    let (found, drawn, none) = (lot.found, lot.drawn, Quantity::ZERO);
    let unsorted = found.there_unsorted(lot.facts.rough);
    let good = found.there_good().plus(lot.more);
    // Taken beyond what was sorted good: off the heap, and beyond that more was there.
    let taken = drawn.plus(lot.seen_gone);
    let off_the_heap = taken.minus(good).max(none).min(unsorted);
    let (unsorted, shelf) = (unsorted.minus(off_the_heap), good.minus(taken).max(none));
    // Found empty: what should be there is gone.
    let left = |there: Quantity| if found.empty { (there, none) } else { (none, there) };
    let ((heap_gone, heap), (shelf_gone, shelf)) = (left(unsorted), left(shelf));
    let steps = [
        (Reached::Gathered, [none, none, none]),
        (Reached::NailsOut, [found.as_gathered, none, none]),
        (Reached::Sorted, [found.at_sorting().plus(heap_gone), found.lost_unsorted, heap]),
        (Reached::Milled, [found.as_milled, none, none]),
        (Reached::InThePiece, [shelf_gone, found.lost_good.plus(lot.seen_gone), shelf]),
    ];
    (steps, drawn)
}

/// What getting to a link cost.
fn cost(books: &Books, lot: &LotAccount, lines: &[LotLine], at: Reached) -> (Statement, Hours) {
    let (mut of_link, mut hours) = (Lines::default(), Hours::ZERO);
    for line in lines.iter().filter(|line| reached(books, line) == at) {
        let known = line.gap.is_none() || !line.parts.is_zero();
        let value = known.then(|| line.parts.total());
        of_link.add(books, line.entry, value, line.working, line.gap, Lens::All);
        hours = hours.plus(line.parts.own_hours()).plus(line.parts.paid_hours());
    }
    (sum_of(Rule::LinkCost { lot: lot.facts.entry(), at, hours }, of_link), hours)
}

/// To which link a line of the lot's cost belongs.
fn reached(books: &Books, line: &LotLine) -> Reached {
    const MILL: [Id; 2] = [standing_id(4), standing_id(8)];
    match line.stage {
        _ if line.pool == Pool::Fetched => Reached::Gathered,
        Some(stage) if books.shop.has_role(stage, Role::Reclaim) => Reached::NailsOut,
        Some(stage) if MILL.contains(&stage) => Reached::Milled,
        Some(_) | None => Reached::Sorted,
    }
}
