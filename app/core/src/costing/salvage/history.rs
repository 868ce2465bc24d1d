//! How salvage goes: the maker's own lots of a place, with their spread; until there are three, common practice.
//!
//! Usable: good of what was sorted. Time: hours of reclaiming for what was sorted, for as much as there is here. Badly is
//! the worst of the maker's own, usually their median, well the best.
//! Source: own history by our own rule, DEVELOPERS.md § Salvage; without it *common practice*, from memory: of old boards
//! 55, 70 and 85 in 100 are usable, and 40, 25 and 15 minutes pull the nails of one and clean it (10, 6 and 4 minutes a
//! board foot).

use crate::{
    costing::{Books, stock::LotAccount},
    journal::kinds::{Case, Cases, Origin},
    measure::{Dec, InOrder, Quantity, Ratio, Seconds, Unit, convert, fixed},
};

/// What is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pile {
    /// How much.
    pub quantity: Quantity,
    /// In which unit.
    pub unit: Unit,
    /// How many boards, where they are counted.
    pub boards: Option<u32>,
}

/// Where an offer comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfferFrom {
    /// So many of the maker's own lots from the same place.
    Own {
        /// How many.
        lots: usize,
    },
    /// What the trade reckons with.
    CommonPractice,
}

/// How it may go, badly, usually and well.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Offer {
    /// Share usable.
    pub usable: [Ratio; 3],
    /// Where that comes from.
    pub usable_from: OfferFrom,
    /// How long reclaiming all of it takes; none: it is neither counted nor measured as timber is.
    pub time: Option<[Seconds; 3]>,
    /// Where that comes from.
    pub time_from: OfferFrom,
}

/// Fewer are no spread.
const ENOUGH: usize = 3;
const USABLE: [i128; 3] = [550_000, 700_000, 850_000];
const MINUTES_A_BOARD: [i128; 3] = [40, 25, 15];
const MINUTES_A_BOARD_FOOT: [i128; 3] = [10, 6, 4];

impl Books {
    /// How a pile from a place may go.
    pub fn offer(&self, whence: Option<&str>, pile: Pile) -> Offer {
        let whence = whence.map(str::trim).filter(|it| !it.is_empty());
        let lots: Vec<&LotAccount> = self.stock.lots.values().filter(|lot| is_from(lot, whence)).collect();
        let usable = lots.iter().filter_map(|lot| Some(lot.found.yielded()?.micros()));
        let times = lots.iter().filter_map(|lot| time(lot, pile));
        let own = |spread: Option<([i128; 3], usize)>| match spread {
            Some((spread, lots)) => (Some(spread), OfferFrom::Own { lots }),
            None => (None, OfferFrom::CommonPractice),
        };
        let (usable, usable_from) = own(spread(usable.collect()));
        let (times, time_from) = own(spread(times.collect()));
        let time = times.map(|[low, middle, high]| [high, middle, low]).or_else(|| usual_time(pile));
        Offer {
            usable: usable
                .unwrap_or(USABLE)
                .map(|it| Ratio::share(fixed::decimal_of(it)).unwrap_or(Ratio::ZERO)),
            usable_from,
            time: time.map(|all| all.map(seconds)),
            time_from,
        }
    }
}

/// What was typed for one way: share usable, minutes a board or in all.
pub type TypedCase = (Option<Dec>, Option<u32>);

impl Offer {
    /// The three ways as they are kept: what was typed, else what is offered. Where only what is usual was typed, badly
    /// and well keep their distance to it, in proportion. None: nobody can say how long it takes.
    pub fn cases(&self, boards: Option<u32>, typed: [TypedCase; 3]) -> Option<Cases> {
        let [_, (usual_share, usual_minutes), _] = typed;
        let usual_share = usual_share.and_then(|it| Ratio::share(it.0));
        let minutes = self.minutes(boards);
        let case = |at: usize| {
            let (share, time) = typed.get(at).copied()?;
            let offered = minutes.and_then(|all| all.get(at).copied());
            let usual = minutes.and_then(|all| all.get(1).copied());
            let time = time.or_else(|| match (usual_minutes, offered, usual) {
                (Some(typed), Some(offered), Some(usual)) => scaled(offered, typed, usual),
                (Some(typed), _, _) => Some(typed),
                (None, offered, _) => offered,
            })?;
            let share = share.or_else(|| Some(self.share(at, usual_share)?.hundredth()))?;
            Some(Case { usable: share, minutes: time })
        };
        Some(Cases { badly: case(0)?, usually: case(1)?, well: case(2)? })
    }

    /// Minutes a board, or in all where no boards are counted.
    pub fn minutes(&self, boards: Option<u32>) -> Option<[u32; 3]> {
        let of = i128::from(boards.filter(|it| *it > 0).unwrap_or(1)).saturating_mul(60);
        let minutes = |Seconds(time): Seconds| {
            u32::try_from(fixed::mul_div(time.into(), 1, of).unwrap_or(0)).unwrap_or(u32::MAX)
        };
        self.time.map(|all| all.map(minutes))
    }

    fn share(&self, at: usize, typed: Option<Ratio>) -> Option<Ratio> {
        let [_, usual, _] = self.usable;
        let offered = self.usable.get(at).copied()?;
        let Some(typed) = typed else { return Some(offered) };
        let scaled = fixed::mul_div(offered.micros(), typed.micros(), usual.micros())?;
        Ratio::share(fixed::decimal_of(scaled.min(fixed::SCALE)))
    }
}

fn scaled(offered: u32, typed: u32, usual: u32) -> Option<u32> {
    let scaled = fixed::mul_div(offered.into(), typed.into(), usual.into());
    Some(scaled.and_then(|it| u32::try_from(it).ok()).unwrap_or(typed))
}

fn is_from(lot: &LotAccount, whence: Option<&str>) -> bool {
    let from = lot.facts.whence.as_deref().map(str::trim);
    lot.facts.origin == Origin::Salvaged && whence.is_some() && from == whence
}

/// How long this pile would take at what this lot took, in seconds.
fn time(lot: &LotAccount, pile: Pile) -> Option<i128> {
    let hours = lot.reclaimed.own_hours().plus(lot.reclaimed.paid_hours());
    let sorted = convert(lot.found.good.plus(lot.found.culled), lot.facts.unit, pile.unit)?;
    let Seconds(seconds) = hours.seconds();
    let time = fixed::mul_div(seconds.into(), pile.quantity.micros(), sorted.micros())?;
    (time > 0).then_some(time)
}

fn usual_time(pile: Pile) -> Option<[i128; 3]> {
    if let Some(boards) = pile.boards {
        return Some(MINUTES_A_BOARD.map(|it| it.saturating_mul(60).saturating_mul(boards.into())));
    }
    let feet = convert(pile.quantity, pile.unit, Unit::BoardFoot)?;
    let time = |minutes: i128| fixed::mul_div(minutes.saturating_mul(60), feet.micros(), fixed::SCALE);
    let [badly, usually, well] = MINUTES_A_BOARD_FOOT;
    Some([time(badly)?, time(usually)?, time(well)?])
}

fn seconds(of: i128) -> Seconds {
    Seconds(i64::try_from(of).unwrap_or(i64::MAX))
}

/// The least, the median, the greatest, and of how many; none of fewer than three.
fn spread(mut all: Vec<i128>) -> Option<([i128; 3], usize)> {
    if all.len() < ENOUGH {
        return None;
    }
    all.order();
    let at = |place: Option<usize>| all.get(place?).copied();
    let (lower, upper) = (at(all.len().saturating_sub(1).checked_div(2))?, at(all.len().checked_div(2))?);
    let middle = fixed::mul_div(lower.saturating_add(upper), 1, 2)?;
    Some(([*all.first()?, middle, *all.last()?], all.len()))
}
