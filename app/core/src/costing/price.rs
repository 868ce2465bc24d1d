//! What to ask for one piece: from a margin, a mark-up, or what an hour of one's own is to earn.
//!
//! Before tax, after fees: margin m of the price, cost ÷ (1 − m − fee); mark-up on the cost, cost × (1 + m) ÷ (1 − fee); pay
//! w an hour, (cost − own labour + w × own hours) ÷ (1 − fee). Tax goes on top. Each is rounded once to 10⁻⁶.
//! Worked example: 56 at a margin of 30 % with a fee of 6.5 % is 56 ÷ 0.635 = 88.19.
//! Source: margin and mark-up as in textbooks of cost accounting; pay an hour: our own rule, DEVELOPERS.md § Figures.

use super::{Ahead, Books, BuildCost, Hours, OneSide, Rule};
use crate::{
    journal::{Id, Shop},
    measure::{Dec, Money, Quantity, fixed},
};

/// What one piece cost, and what of that is one's own time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OnePiece {
    /// All of it.
    pub cost: Money,
    /// Own labour in it, at its rate.
    pub own: Money,
    /// Own hours in it.
    pub hours: Hours,
    /// Over how many pieces that is.
    pub pieces: u32,
    /// None is finished: what it has cost so far and what is known to be still ahead, over those that are wanted.
    pub ahead: Option<Ahead>,
}

impl OnePiece {
    /// What all pieces bring at so much each.
    pub fn in_all(&self, each: Money) -> Option<Money> {
        fixed::mul_div(each.micros(), i128::from(self.pieces), 1).map(Money::from_micros)
    }
}

/// What the price goes by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wish {
    /// A share of the price.
    Margin(Dec),
    /// A share of the cost, on top.
    Markup(Dec),
    /// Money an hour of one's own.
    AnHour(Dec),
}

/// What those that are wanted will have cost.
pub(super) struct Wanted {
    /// So far and still to come, one-off work apart.
    pub cost: Money,
    /// Own labour in it, and in the share of one-off work.
    pub own: Money,
    /// Own hours, likewise.
    pub hours: Hours,
}

/// Why there is no price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPrice {
    /// Margin and fee together leave nothing of the price for the cost.
    NothingLeft,
    /// Nobody worked on it without pay.
    NoOwnHours,
    /// The numbers are too large.
    TooLarge,
}

/// A price, and what it means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Price {
    /// Before tax.
    pub each: Money,
    /// With tax on top.
    pub with_tax: Money,
    /// Kept back by whoever sells it.
    pub fee: Money,
    /// What is left over the cost.
    pub profit: Money,
    /// What an hour of one's own earns at it; none: no own hours.
    pub an_hour: Option<Money>,
}

/// The price of one piece. `fee` and `tax` are shares: 0.13 is 13 %.
///
/// # Errors
/// [`NoPrice`]: why there is none.
pub fn price(one: &OnePiece, wish: Wish, fee: Dec, tax: Dec) -> Result<Price, NoPrice> {
    let (fee, tax) = (micros(fee)?, micros(tax)?);
    let whole = fixed::SCALE;
    let (base, over) = match wish {
        Wish::Margin(margin) => {
            (one.cost.micros(), whole.saturating_sub(micros(margin)?).saturating_sub(fee))
        }
        Wish::Markup(markup) => {
            let raised = fixed::mul_div(one.cost.micros(), whole.saturating_add(micros(markup)?), whole);
            (raised.ok_or(NoPrice::TooLarge)?, whole.saturating_sub(fee))
        }
        Wish::AnHour(pay) => {
            if one.hours.is_zero() {
                return Err(NoPrice::NoOwnHours);
            }
            let others = one.cost.minus(one.own);
            let paid = earned(one.hours, Money::from_micros(micros(pay)?)).ok_or(NoPrice::TooLarge)?;
            (others.plus(paid).micros(), whole.saturating_sub(fee))
        }
    };
    if over <= 0 {
        return Err(NoPrice::NothingLeft);
    }
    let each = fixed::mul_div(base, whole, over).map(Money::from_micros).ok_or(NoPrice::TooLarge)?;
    at(one, each, fee, tax).ok_or(NoPrice::TooLarge)
}

/// What a price that is asked already means.
///
/// # Errors
/// [`NoPrice::TooLarge`].
pub fn asked(one: &OnePiece, each: Money, fee: Dec, tax: Dec) -> Result<Price, NoPrice> {
    at(one, each, micros(fee)?, micros(tax)?).ok_or(NoPrice::TooLarge)
}

fn at(one: &OnePiece, each: Money, fee: i128, tax: i128) -> Option<Price> {
    let share = |part: i128| fixed::mul_div(each.micros(), part, fixed::SCALE).map(Money::from_micros);
    let (fee, tax) = (share(fee)?, share(tax)?);
    let profit = each.minus(fee).minus(one.cost);
    let hour = fixed::SCALE.saturating_mul(3600);
    let an_hour =
        fixed::mul_div(profit.plus(one.own).micros(), hour, one.hours.micros()).map(Money::from_micros);
    Some(Price { each, with_tax: each.plus(tax), fee, profit, an_hour })
}

/// Hours at so much an hour, rounded once.
pub(super) fn earned(hours: Hours, an_hour: Money) -> Option<Money> {
    let hour = fixed::SCALE.saturating_mul(3600);
    fixed::mul_div(hours.micros(), an_hour.micros(), hour).map(Money::from_micros)
}

fn micros(share: Dec) -> Result<i128, NoPrice> {
    share.quantity().map(Quantity::micros).ok_or(NoPrice::TooLarge)
}

impl Books {
    /// What one piece of a build costs, by the side of the piece: a good one where any is finished, else one of those
    /// wanted, with what its steps still cost. None: nothing can be said yet.
    pub fn one_piece(&self, shop: &Shop, build: Id) -> Option<OnePiece> {
        let cost = self.build_cost(build);
        let (piece, _) = cost.side_parts;
        let over = |sum: Money, pieces: u32| {
            fixed::mul_div(sum.micros(), 1, i128::from(pieces)).map(Money::from_micros)
        };
        let hours_over = |hours: Hours, pieces: u32| {
            fixed::mul_div(hours.micros(), 1, i128::from(pieces)).map(Hours::of_scaled)
        };
        if cost.items.good > 0 {
            let pieces = cost.items.good;
            return Some(OnePiece {
                cost: cost.batch.item.money()?,
                own: over(piece.own_labour(), pieces)?,
                hours: hours_over(piece.own_hours(), pieces)?,
                pieces,
                ahead: None,
            });
        }
        let pieces = shop.builds.get(&build)?.items.max(1);
        let wanted = self.wanted_pieces(shop, build, &cost, pieces)?;
        let each = cost.batch.one_off_each;
        if wanted.cost.is_zero() && each.is_zero() {
            return None;
        }
        Some(OnePiece {
            cost: over(wanted.cost, pieces)?.plus(each),
            own: over(wanted.own, pieces)?,
            hours: hours_over(wanted.hours, pieces)?,
            pieces,
            ahead: Some(self.ahead(shop, build)),
        })
    }

    /// What those that are wanted cost by the side of the piece, while none is finished.
    pub(super) fn wanted_pieces(
        &self,
        shop: &Shop,
        build: Id,
        cost: &BuildCost,
        pieces: u32,
    ) -> Option<Wanted> {
        let (piece, _) = cost.side_parts;
        let to_come = self.steps_to_come(shop, build, Some(OneSide::Piece));
        let (own, hours) = cost.one_off.map(|it| it.own_in(pieces)).unwrap_or_default();
        Some(Wanted {
            cost: piece_side(cost)?.plus(to_come.total()),
            own: piece.own_labour().plus(to_come.own_labour()).plus(own),
            hours: piece.own_hours().plus(to_come.own_hours()).plus(hours),
        })
    }
}

fn piece_side(cost: &BuildCost) -> Option<Money> {
    cost.sides.part(|rule| matches!(rule, Rule::Side { side: OneSide::Piece, .. }))?.money()
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::Seconds};

    fn dec(text: &str) -> Dec {
        Dec::parse(text).unwrap()
    }

    fn one(cost: &str, own: &str, minutes: i64) -> OnePiece {
        let money = |text: &str| dec(text).money().unwrap();
        let hours = Hours::of(Seconds(minutes * 60));
        OnePiece { cost: money(cost), own: money(own), hours, pieces: 1, ahead: None }
    }

    fn said(one: &OnePiece, wish: Wish, fee: &str, tax: &str) -> String {
        price(one, wish, dec(fee), dec(tax)).map_or_else(
            |it| format!("{it:?}"),
            |it| {
                let hour = it.an_hour.map_or("none".to_owned(), |it| it.shown(2));
                format!("{} {} {} {hour}", it.each.shown(2), it.with_tax.shown(2), it.profit.shown(2))
            },
        )
    }

    #[test]
    fn a_margin_is_of_the_price_and_a_markup_of_the_cost() {
        let it = one("56", "30", 60);
        assert_eq!(said(&it, Wish::Margin(dec("0.30")), "0.065", "0.13"), "88.19 99.65 26.46 56.46");
        assert_eq!(said(&it, Wish::Markup(dec("0.30")), "0", "0"), "72.80 72.80 16.80 46.80");
    }

    #[test]
    fn pay_an_hour_takes_the_place_of_own_labour() {
        // 26 beside the own hour; 40 an hour makes 66, which is then what the hour earns.
        assert_eq!(said(&one("56", "30", 60), Wish::AnHour(dec("40")), "0", "0"), "66.00 66.00 10.00 40.00");
        assert_eq!(said(&one("56", "0", 0), Wish::AnHour(dec("40")), "0", "0"), "NoOwnHours");
    }

    #[test]
    fn margin_and_fee_that_take_all_of_it_leave_no_price() {
        assert_eq!(said(&one("56", "30", 60), Wish::Margin(dec("0.95")), "0.05", "0"), "NothingLeft");
    }

    #[test]
    fn before_any_is_finished_one_piece_is_of_those_wanted_with_what_is_still_to_come() {
        let it = fixture(
            "
            person Ana 20
            build trays items 4
            expense wood 40 for trays
            stretch Ana mill min 120 for trays
            step sand-them trays sand who Ana hours 2,2,2
            ",
        );
        let one = it.books().one_piece(&it.shop(), it.id("trays")).unwrap();
        // 40 + 2 h + 2 h at 20, over four.
        assert_eq!(
            (one.cost.shown(2), one.own.shown(2), one.ahead),
            ("30.00".into(), "20.00".into(), Some(Ahead::Planned))
        );
        assert_eq!(one.hours.seconds(), Seconds(3600));
    }

    #[test]
    fn nothing_planned_is_so_far_and_a_step_without_hours_leaves_it_open() {
        let check = |lines: &str, ahead: Ahead| {
            let it =
                fixture(&format!("person Ana 20\nbuild trays items 4\nexpense wood 40 for trays\n{lines}"));
            let one = it.books().one_piece(&it.shop(), it.id("trays")).unwrap();
            assert_eq!((one.cost.shown(2), one.ahead), ("10.00".into(), Some(ahead)), "{lines}");
        };
        check("", Ahead::Unplanned);
        check("step sand-them trays sand who Ana", Ahead::Partly);
    }

    #[test]
    fn a_share_of_one_off_work_is_in_the_price_before_the_first_is_finished_and_after() {
        let mut it = fixture(
            "
            person Ana 20
            build trays items 10 run 30
            expense wood 40 for trays
            expense jig 90 for trays one-off
            stretch Ana mill min 600 for trays
            stretch Ana cut min 180 for trays one-off
            ",
        );
        // 40 and 10 h at 20 over ten; 90 and 3 h at 20 over the thirty of the run.
        let told = |it: &crate::fixture::Fixture| {
            let one = it.books().one_piece(&it.shop(), it.id("trays")).unwrap();
            (one.cost.shown(2), one.own.shown(2), one.hours.seconds())
        };
        let before = told(&it);
        assert_eq!(before, ("29.00".into(), "22.00".into(), Seconds(3960)));
        it.add("made trays 10");
        assert_eq!(told(&it), before);
    }

    #[test]
    fn planned_hours_for_both_are_shared_by_the_key_as_those_worked_are() {
        let it = fixture(
            "
            person Ana 20
            stage set both
            build trays items 1
            stretch Ana mill min 180 for trays
            stretch Ana shoot min 60 for trays side film
            step set-it trays set who Ana hours 4,4,4
            step shoot-it trays shoot who Ana hours 2,2,2
            ",
        );
        // 3 h of the piece to 1 of the film: 3 of the 4 planned.
        let one = it.books().one_piece(&it.shop(), it.id("trays")).unwrap();
        assert_eq!((one.cost.shown(2), one.hours.seconds()), ("120.00".into(), Seconds(6 * 3600)));
    }
}
