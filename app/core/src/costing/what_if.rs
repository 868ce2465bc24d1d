//! What if: the answers of a build with another rate of one's own, another price, another number of good pieces, or
//! another price of new stock. Nothing is stored, and nothing is folded again: the answers follow the thumb.
//!
//! Rate: own hours, those in the timber in it, at the tried rate instead of what they cost. Price: what the pieces bring,
//! good ones × price, instead of what sales have brought and are expected to. Pieces: so many good ones from the same
//! work. New stock: all prices noted for it by the same factor, delivery as it is. What an hour earns sets all that comes
//! in against all that the build costs, so far and by its plan (`outlook`); one piece, while none is finished, is what
//! its price goes by (`price`).
//! Source: our own rule, DEVELOPERS.md § Figures.

mod sales;
mod take;

pub use sales::NotTaken;
pub use take::{not_taken, take};

use super::{Ahead, Books, BuildCost, Hours, OneOff, PartOf, Rule, Working, price::earned, statement::Part};
use crate::{
    journal::{Id, Shop},
    measure::{Money, fixed},
};

/// What is tried; none: as it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Tried {
    /// Money an hour of one's own.
    pub rate: Option<Money>,
    /// Net, for one piece.
    pub price: Option<Money>,
    /// Good pieces.
    pub pieces: Option<u32>,
    /// Prices of new stock, in hundredths of what was noted.
    pub new_stock: Option<u32>,
}

/// As it stands, to try from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stands {
    /// What an own hour cost on the average; none: no own hours.
    pub rate: Option<Money>,
    /// What a piece brings, sales received and expected over the pieces; none: none expected.
    pub price: Option<Money>,
    /// Good ones, or those wanted.
    pub pieces: u32,
    /// What is known of what is still ahead.
    pub ahead: Ahead,
}

/// The answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Answers {
    /// All parts.
    pub true_cost: Money,
    /// One piece, film apart.
    pub one_piece: Option<Money>,
    /// What an own hour earned, with what is still expected and still to do; none: no own hours.
    pub an_hour: Option<Money>,
    /// What salvage saved, own time at its rate; none: it drew none.
    pub saved: Option<Money>,
}

/// A build laid out to be tried: sums only, so that each answer is a few products.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Trial {
    /// As it stands.
    pub stands: Stands,
    true_cost: Money,
    own: Money,
    hours: Hours,
    piece: Money,
    piece_own: Money,
    piece_hours: Hours,
    /// Sales of the piece, net, received and expected.
    sales: Money,
    /// All else that came in or is expected, in kind too.
    others: Money,
    /// What it costs beside own time, and own hours, with what its plan still takes.
    in_all: (Money, Hours),
    scrap_and_loss: Money,
    one_off: Option<OneOff>,
    saved: Option<Saved>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Saved {
    at_rate: Money,
    own: Money,
    hours: Hours,
    /// Bought instead, delivery apart.
    goods: Money,
}

impl Books {
    /// A build laid out to be tried. None: there is no such build.
    pub fn trial(&self, shop: &Shop, build: Id) -> Option<Trial> {
        let of = shop.builds.get(&build)?;
        let cost = self.build_cost(build);
        let (parts, _) = cost.side_parts;
        let mut piece = (parts.total(), parts.own_labour(), parts.own_hours());
        let mut scrap_and_loss = cost.items.scrap.plus(cost.batch.loss);
        let pieces = if cost.items.good > 0 { cost.items.good } else { of.items.max(1) };
        if cost.items.good == 0 {
            let wanted = self.wanted_pieces(shop, build, &cost, pieces)?;
            (piece, scrap_and_loss) = ((wanted.cost, wanted.own, wanted.hours), Money::ZERO);
        }
        let ahead = self.ahead(shop, build);
        let (plan, plan_own, plan_hours) = match ahead {
            Ahead::Nothing | Ahead::Unplanned => <(Money, Money, Hours)>::default(),
            Ahead::Planned | Ahead::Partly => self.plan_to_come(shop, build, &cost),
        };
        let hours = cost.parts.own_hours();
        let own = cost.parts.own_labour();
        let sales = sales::sales(shop, build, shop.zone.day(self.as_of));
        let all = cost.earned.net.money().unwrap_or_default();
        let expected = cost.earned.expected.money().unwrap_or_default();
        let in_kind = cost.in_kind.money().unwrap_or_default();
        let over = |sum: Money| fixed::mul_div(sum.micros(), 1, i128::from(pieces)).map(Money::from_micros);
        let hour = fixed::SCALE.saturating_mul(3600);
        let true_cost = cost.true_cost.money()?;
        Some(Trial {
            stands: Stands {
                rate: fixed::mul_div(own.micros(), hour, hours.micros()).map(Money::from_micros),
                price: if sales.is_zero() { None } else { over(sales) },
                pieces,
                ahead,
            },
            true_cost,
            own,
            hours,
            piece: piece.0,
            piece_own: piece.1,
            piece_hours: piece.2,
            in_all: (true_cost.plus(plan).minus(own).minus(plan_own), hours.plus(plan_hours)),
            sales,
            others: all.plus(expected).plus(in_kind).minus(sales),
            scrap_and_loss,
            one_off: cost.one_off,
            saved: saved(&cost),
        })
    }
}

fn saved(cost: &BuildCost) -> Option<Saved> {
    let saving = cost.saving.as_ref()?;
    let part = |of: fn(&Rule) -> bool| saving.at_rate.part(of);
    let own = part(|rule| matches!(rule, Rule::BuildOwnTime { .. }))?;
    let hours = if let Rule::BuildOwnTime { hours } = own.rule { hours } else { Hours::ZERO };
    let instead = part(|rule| *rule == Rule::BuildInstead)?;
    let delivered = instead.parts.iter().map(|part: &Part| match &part.of {
        PartOf::Entry { working: Working::BoughtInstead { delivery, .. }, .. } => *delivery,
        PartOf::Entry { .. } | PartOf::Statement(_) => Money::ZERO,
    });
    let delivery = delivered.fold(Money::ZERO, Money::plus);
    Some(Saved {
        at_rate: saving.at_rate.money()?,
        own: own.money().unwrap_or_default(),
        hours,
        goods: instead.money()?.minus(delivery),
    })
}

impl Trial {
    /// What the pieces bring as tried; none: nothing is tried that changes it.
    pub fn sales(&self, tried: Tried) -> Option<Money> {
        if tried.price.is_none() && tried.pieces.is_none() {
            return None;
        }
        let price = tried.price.or(self.stands.price)?;
        let pieces = tried.pieces.unwrap_or(self.stands.pieces);
        fixed::mul_div(price.micros(), i128::from(pieces), 1).map(Money::from_micros)
    }

    /// The answers to what is tried.
    pub fn answers(&self, tried: Tried) -> Answers {
        let more_for = |hours: Hours, own: Money| match tried.rate {
            Some(rate) => earned(hours, rate).unwrap_or(own).minus(own),
            None => Money::ZERO,
        };
        let true_cost = self.true_cost.plus(more_for(self.hours, self.own));
        let pieces = tried.pieces.unwrap_or(self.stands.pieces);
        let sales = self.sales(tried).unwrap_or(self.sales);
        // What it costs the maker beside own time, which the tried rate does not change.
        let (others, hours) = self.in_all;
        let left = sales.plus(self.others).minus(others);
        let hour = fixed::SCALE.saturating_mul(3600);
        let one_off = self.one_off.map(|it| (it.share.total(), it.each_of(pieces)));
        let (share, each) = one_off.unwrap_or_default();
        let piece = self.piece.plus(more_for(self.piece_hours, self.piece_own));
        let good = piece.minus(share).minus(self.scrap_and_loss);
        let one =
            fixed::mul_div(good.micros(), 1, i128::from(pieces)).map(|it| Money::from_micros(it).plus(each));
        Answers {
            true_cost,
            one_piece: one.filter(|_| pieces > 0),
            an_hour: fixed::mul_div(left.micros(), hour, hours.micros()).map(Money::from_micros),
            saved: self.saved.map(|it| {
                let factor = i128::from(tried.new_stock.unwrap_or(100)).saturating_sub(100);
                let dearer = fixed::mul_div(it.goods.micros(), factor, 100).unwrap_or(0);
                it.at_rate.plus(Money::from_micros(dearer)).minus(more_for(it.hours, it.own))
            }),
        }
    }
}

/// What a thumb moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Knob {
    /// Money an hour of one's own.
    Rate,
    /// Net, for one piece.
    Price,
    /// Good pieces.
    Pieces,
    /// Prices of new stock.
    NewStock,
}

/// What a knob says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum At {
    /// Money.
    Money(Money),
    /// So many.
    Count(u32),
    /// In hundredths of what was noted.
    Hundredths(u32),
}

/// Steps on the scale of money: from nothing to about twice what stands.
const MONEY_STEPS: u32 = 100;
/// Prices of new stock go by five hundredths, to twice what was noted.
const STOCK_STEP: u32 = 5;
const STOCK_STEPS: u32 = 40;

impl Trial {
    /// How many steps its scale has; none: there is nothing of the kind to try.
    pub fn steps(&self, knob: Knob) -> Option<u32> {
        match knob {
            Knob::Rate => self.stands.rate.map(|_| MONEY_STEPS),
            Knob::Price => Some(MONEY_STEPS),
            Knob::Pieces => Some(self.stands.pieces.saturating_mul(2).max(10)),
            Knob::NewStock => self.saved.map(|_| STOCK_STEPS),
        }
    }

    /// What it says, tried or as it stands.
    pub fn at(&self, tried: &Tried, knob: Knob) -> At {
        match knob {
            Knob::Rate => At::Money(tried.rate.or(self.stands.rate).unwrap_or_default()),
            Knob::Price => At::Money(tried.price.or(self.stands.price).unwrap_or_default()),
            Knob::Pieces => At::Count(tried.pieces.unwrap_or(self.stands.pieces)),
            Knob::NewStock => At::Hundredths(tried.new_stock.unwrap_or(100)),
        }
    }

    /// The step at which it stands, the nearest one.
    pub fn step(&self, tried: &Tried, knob: Knob) -> u32 {
        match self.at(tried, knob) {
            At::Money(money) => {
                let step = self.money_step(knob).micros().max(1);
                let half = money.micros().saturating_add(step.checked_div(2).unwrap_or(0));
                let at = half.checked_div(step).and_then(|at| u32::try_from(at).ok());
                at.unwrap_or(MONEY_STEPS).min(MONEY_STEPS)
            }
            At::Count(count) => count,
            At::Hundredths(share) => share.checked_div(STOCK_STEP).unwrap_or(0),
        }
    }

    /// The same with one knob moved to a step of its scale.
    #[must_use]
    pub fn moved(&self, tried: Tried, knob: Knob, step: u32) -> Tried {
        let money = || {
            let one = self.money_step(knob).micros();
            Some(Money::from_micros(one.saturating_mul(i128::from(step.min(MONEY_STEPS)))))
        };
        match knob {
            Knob::Rate => Tried { rate: money(), ..tried },
            Knob::Price => Tried { price: money(), ..tried },
            Knob::Pieces => Tried { pieces: Some(step.max(1)), ..tried },
            Knob::NewStock => {
                Tried { new_stock: Some(step.min(STOCK_STEPS).saturating_mul(STOCK_STEP)), ..tried }
            }
        }
    }

    /// The least of 1, 2, 5 × a power of ten of which fifty come to what stands.
    fn money_step(&self, knob: Knob) -> Money {
        let around = match knob {
            Knob::Rate => self.stands.rate,
            Knob::Price | Knob::Pieces | Knob::NewStock => {
                self.stands.price.or(self.answers(Tried::default()).one_piece)
            }
        };
        let wanted = around.unwrap_or_default().micros().checked_div(50).unwrap_or(0).max(LEAST_STEP);
        let mut power = LEAST_STEP;
        loop {
            for times in [1, 2, 5] {
                let step = power.saturating_mul(times);
                if step >= wanted {
                    return Money::from_micros(step);
                }
            }
            power = power.saturating_mul(10);
        }
    }
}

/// A hundredth of the currency's unit.
const LEAST_STEP: i128 = fixed::SCALE / 100;

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::Dec};

    const SHOP: &str = "
        person Ana 20
        build trays items 10
        lot oak salvaged 40 paid 20 yield 1 new 5 as oak
        stretch Ana reclaim min 120 for oak
        sort oak good 40
        draw 20 oak for trays
        stretch Ana mill min 600 for trays
        expense screws 30 for trays
        income sale piece expected 500 for trays
        made trays 10";

    fn money(text: &str) -> Option<Money> {
        Dec::parse(text).unwrap().money()
    }

    fn said(tried: Tried) -> [String; 4] {
        let it = fixture(SHOP);
        let trial = it.books().trial(&it.shop(), it.id("trays")).unwrap();
        let answers = trial.answers(tried);
        let text = |it: Option<Money>| it.map_or("none".into(), |it| it.shown(2));
        [text(Some(answers.true_cost)), text(answers.one_piece), text(answers.an_hour), text(answers.saved)]
    }

    #[test]
    fn nothing_tried_is_how_it_stands() {
        let it = fixture(SHOP);
        let cost = it.books().build_cost(it.id("trays"));
        let [true_cost, one, hour, saved] = said(Tried::default());
        assert_eq!(Some(true_cost), cost.true_cost.money().map(|it| it.shown(2)));
        assert_eq!(Some(one), cost.batch.item.money().map(|it| it.shown(2)));
        assert_eq!(Some(saved), cost.saving.unwrap().at_rate.money().map(|it| it.shown(2)));
        // 500 less 10 of the lot and 30 of screws, over 11 own hours.
        assert_eq!(hour, "41.82");
    }

    #[test]
    fn another_rate_moves_cost_and_saving_and_not_what_an_hour_earned() {
        let [true_cost, one, hour, saved] = said(Tried { rate: money("30"), ..Tried::default() });
        // 40 and 11 h at 30; 20 × 5 less 10 and one hour at 30.
        assert_eq!([true_cost, one, hour, saved], ["370.00", "37.00", "41.82", "60.00"]);
    }

    #[test]
    fn price_and_pieces_move_what_an_hour_earned() {
        let it = said(Tried { price: money("60"), ..Tried::default() });
        assert_eq!(it, ["260.00", "26.00", "50.91", "70.00"]);
        // Eight good ones at what they were to bring, 50 each.
        assert_eq!(said(Tried { pieces: Some(8), ..Tried::default() })[1..3], ["32.50", "32.73"]);
    }

    #[test]
    fn a_scale_of_money_has_what_stands_near_its_middle() {
        let it = fixture(SHOP);
        let trial = it.books().trial(&it.shop(), it.id("trays")).unwrap();
        // 20 an hour in steps of 0.50: twenty is the fortieth of a hundred.
        let tried = Tried::default();
        assert_eq!(
            (trial.step(&tried, Knob::Rate), trial.at(&tried, Knob::Rate)),
            (40, At::Money(money("20").unwrap()))
        );
        let moved = trial.moved(tried, Knob::Rate, 60);
        assert_eq!((trial.step(&moved, Knob::Rate), moved.rate), (60, money("30")));
        assert_eq!(trial.moved(tried, Knob::NewStock, 30).new_stock, Some(150));
        assert_eq!((trial.steps(Knob::Pieces), trial.step(&tried, Knob::Pieces)), (Some(20), 10));
    }

    #[test]
    fn dearer_new_stock_saves_more() {
        assert_eq!(said(Tried { new_stock: Some(150), ..Tried::default() })[3], "120.00");
        assert_eq!(said(Tried { new_stock: Some(20), ..Tried::default() })[3], "-10.00");
    }

    #[test]
    fn what_is_still_planned_is_set_against_what_is_expected() {
        let check = |lines: &str, ahead: Ahead, hour: &str, one: &str| {
            let it = fixture(&format!(
                "person Ana 20
                person Bo 15 paid
                build trays items 10
                expense wood 100 for trays
                income sale piece expected 800 for trays
                stretch Ana mill min 120 for trays
                {lines}"
            ));
            let (books, shop, build) = (it.books(), it.shop(), it.id("trays"));
            let trial = books.trial(&shop, build).unwrap();
            let answers = trial.answers(Tried::default());
            let told = [answers.an_hour, answers.one_piece].map(|it| it.unwrap().shown(2));
            assert_eq!((trial.stands.ahead, told), (ahead, [hour.to_owned(), one.to_owned()]), "{lines}");
            let priced = books.one_piece(&shop, build).unwrap();
            assert_eq!(answers.one_piece, Some(priced.cost), "{lines}");
            let dearer = trial.answers(Tried { rate: money("30"), ..Tried::default() }).one_piece.unwrap();
            // Ten more for each own hour that is in it, worked or planned.
            let more = earned(priced.hours, money("10").unwrap()).unwrap();
            assert_eq!(dearer.minus(priced.cost), more, "{lines}");
        };
        // 700 over the two hours of now, 100 and 2 h at 20 over ten.
        check("", Ahead::Unplanned, "350.00", "14.00");
        // Eighteen more hours, and 60 of felt: 640 over twenty.
        let planned = "step sand-them trays sand who Ana hours 18,18,18\n buy-words felt for trays price 60";
        check(planned, Ahead::Planned, "32.00", "56.00");
        // Bo is paid: 4 h at 15 are money, and no own hours.
        let paid = format!("{planned}\n step oil-them trays finish who Bo");
        check(&format!("{paid} hours 4,4,4"), Ahead::Planned, "29.00", "62.00");
        check(&paid, Ahead::Partly, "32.00", "56.00");
        check("close trays", Ahead::Nothing, "350.00", "14.00");
    }

    #[test]
    fn with_a_plan_an_hour_earns_what_the_outlook_leaves_and_own_time_over_all_own_hours() {
        let it = fixture(
            "person Ana 20
            build trays items 10 run 30
            stretch Ana mill min 120 for trays
            stretch Ana cut min 180 for trays one-off
            income sale piece expected 800 for trays
            step sand-them trays sand who Ana hours 8,8,8",
        );
        let (books, shop, build) = (it.books(), it.shop(), it.id("trays"));
        let hour = books.trial(&shop, build).unwrap().answers(Tried::default()).an_hour;
        // 800 over 2 h, 8 h, and ten thirtieths of the 3 h at the jig: nothing else is paid.
        assert_eq!(books.build_cost(build).outlook.money().map(|it| it.shown(2)), Some("580.00".into()));
        assert_eq!(hour.map(|it| it.shown(2)), Some("72.73".into()));
    }
}
