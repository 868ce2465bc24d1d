//! What an hour costs, as the shop's own sheets show it: a tool's run hour, an hour worked in each pool.
//!
//! Sums and quotients for showing only; what a cost bears is worked out entry by entry (`tools`, `overhead`).
//! Source: our own rule, DEVELOPERS.md § Figures.

use super::{Books, Month, ToolBook, overhead::Months};
use crate::{
    journal::{
        Shop,
        kinds::{Bearer, Role},
        shop::Tool,
    },
    measure::{Money, Quantity, fixed},
};

/// How many months back the maker's own hours are looked at.
const LOOKED_AT: usize = 12;

/// Own hours of a usual month.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UsualMonth {
    /// On builds and lots, office apart.
    pub hours: Quantity,
    /// Of these, for the film.
    pub film_hours: Quantity,
    /// Over how many months that are over.
    pub months: usize,
}

impl ToolBook {
    /// The rate a run hour with the blade that is on.
    pub fn rate_with_blade(&self) -> Money {
        self.rate().plus(self.blade.unwrap_or_default())
    }

    /// What wear has taken of the price; none: no price.
    pub fn worn(&self, tool: &Tool) -> Option<Money> {
        Some(tool.price?.minus(self.book_value?))
    }
}

impl Month {
    /// An hour worked, of the shop's pool; none: nobody said over how many hours.
    pub fn an_hour(&self) -> Option<Money> {
        over(self.shop, self.hours)
    }

    /// An hour for the film, on top; none: likewise.
    pub fn film_hour(&self) -> Option<Money> {
        over(self.film, self.film_hours)
    }
}

fn over(cost: Money, hours: Option<Quantity>) -> Option<Money> {
    fixed::mul_div(cost.micros(), fixed::SCALE, hours?.micros()).map(Money::from_micros)
}

impl Books {
    /// What all tools that are there are worth by now; those without a price are left out.
    pub fn tools_worth(&self, shop: &Shop) -> Money {
        let last = shop.zone.day(self.as_of);
        let here = self.tools().iter().filter(|book| {
            shop.tools.get(&book.tool).is_some_and(|tool| tool.gone.is_none_or(|gone| last < gone))
        });
        here.filter_map(|book| book.book_value).fold(Money::ZERO, Money::plus)
    }

    /// What the month of the books costs, and over how many hours.
    pub fn month(&self, shop: &Shop) -> Month {
        Months::of(shop).at(shop.zone.day(self.as_of))
    }

    /// Hours a month over the last twelve that are over, or as many as there were since work was first written down.
    /// None: no month is over yet.
    pub fn usual_month(&self, shop: &Shop) -> Option<UsualMonth> {
        let this = shop.zone.day(self.as_of).first_of_month();
        let counted = |row: &&super::labour::LabourRow| {
            let admin = shop.stages.get(&row.stage).is_some_and(|it| it.role == Some(Role::Admin));
            !admin && row.day < this
        };
        let builds = shop.builds.keys().map(|id| Bearer::Build(*id));
        let bearers = builds.chain(shop.lots.keys().map(|id| Bearer::Lot(*id)));
        let places = bearers.flat_map(|bearer| &self.ledgers.borne_by(bearer).labour);
        let rows = places.filter_map(|at| self.ledgers.labour.get(*at)).filter(counted);
        let rows: Vec<_> = rows.collect();
        let begun = rows.iter().map(|row| row.day.first_of_month()).min()?;
        let mut first = this;
        let mut months: usize = 0;
        while first > begun && months < LOOKED_AT {
            first = first.pred().first_of_month();
            months = months.saturating_add(1);
        }
        let in_time = rows.into_iter().filter(|row| row.day >= first);
        let (all, film) = in_time.fold((0_i128, 0_i128), |(all, film), row| {
            let hours = super::Hours::of(row.seconds);
            let for_film = row.split.hours(hours, super::OneSide::Film).micros();
            (all.saturating_add(hours.micros()), film.saturating_add(for_film))
        });
        let a_month = |time: i128| {
            let over = i128::try_from(months).ok()?.checked_mul(3600)?;
            fixed::mul_div(time, 1, over).map(Quantity::from_micros)
        };
        Some(UsualMonth { hours: a_month(all)?, film_hours: a_month(film)?, months })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixture::fixture;

    fn shown(money: Option<Money>) -> Option<String> {
        money.map(|it| it.shown(3))
    }

    #[test]
    fn a_run_hour_holds_the_blade_and_the_books_what_is_left() {
        let it = fixture(
            "
            setting kwh 0.15
            tool planer price 780 resale 180 life 1500 upkeep 0.35 kw 1.8 load 0.7 before 133.5
            blade knives of planer cost 54.24 life 60 on 2026-02-06
            ",
        );
        let (books, shop) = (it.books(), it.shop());
        let book = books.tool(it.id("planer")).unwrap();
        assert_eq!(book.rate_with_blade().shown(3), "1.843");
        assert_eq!(shown(book.worn(&shop.tools[&it.id("planer")])).as_deref(), Some("53.400"));
        assert_eq!(books.tools_worth(&shop).shown(2), "726.60");
    }

    #[test]
    fn an_hour_of_a_month_is_its_cost_over_its_normal_hours() {
        let it = fixture("setting normal 90\nmonthly rent 360\nmonthly cloud 45 film");
        let month = it.books().month(&it.shop());
        assert_eq!((shown(month.an_hour()).as_deref(), month.film_hour()), (Some("4.000"), None));
    }

    #[test]
    fn a_usual_month_is_of_months_that_are_over() {
        let it = fixture(
            "
            person Ana 26
            build bench
            stretch Ana mill min 600 for bench on 2026-01-10
            stretch Ana edit min 300 for bench side film on 2026-02-10
            stretch Ana admin min 900 for bench on 2026-02-11
            stretch Ana mill min 6000 for bench on 2026-03-02
            ",
        );
        let usual = it.books().usual_month(&it.shop()).unwrap();
        assert_eq!(usual.months, 2);
        assert_eq!(
            (usual.hours.shown_trimmed(), usual.film_hours.shown_trimmed()),
            ("7.5".into(), "2.5".into())
        );
    }
}
