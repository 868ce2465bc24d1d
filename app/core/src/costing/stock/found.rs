//! What was found in a lot so far, as sortings and culls go by in their order.
//!
//! A sorting takes from what is unsorted. A cull of milled timber was sorted good: it leaves what is good; one of
//! timber as it came, or with its nails out, leaves what is unsorted; what the one has no more of, the other gives.
//! What nobody could expect (a flood, rot in store) leaves the timber and not the yield: it stays in what the lot's
//! cost is spread over, and bears its share as a loss. Source: our own rule, DEVELOPERS.md § Salvage.
//! Not here: what that does to the cost (`named_lot`).

use crate::{
    journal::{
        Id,
        kinds::Link,
        order::Order,
        shop::{Cull, Sort},
    },
    measure::{Quantity, Ratio},
};

/// A look at what a lot yielded.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Looked<'a> {
    Sort(&'a Sort),
    Cull(&'a Cull),
}

impl Looked<'_> {
    pub(crate) fn order(&self) -> Order {
        match self {
            Looked::Sort(it) => it.order,
            Looked::Cull(it) => it.order,
        }
    }

    pub(crate) fn lot(&self) -> Id {
        match self {
            Looked::Sort(it) => it.lot,
            Looked::Cull(it) => it.lot,
        }
    }
}

/// What nobody could expect took so much, of what was good and of what was unsorted.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Mishap {
    pub entry: Id,
    pub good: Quantity,
    pub unsorted: Quantity,
}

/// Quantities in the lot's unit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Found {
    /// Sorted and usable, what was lost of it since included.
    pub good: Quantity,
    /// Thrown out as usual wastage.
    pub culled: Quantity,
    /// Of that, as it came.
    pub as_gathered: Quantity,
    /// Of that, when it had been milled.
    pub as_milled: Quantity,
    /// Lost, out of what was good.
    pub lost_good: Quantity,
    /// Lost, out of what was unsorted.
    pub lost_unsorted: Quantity,
    /// Found empty.
    pub empty: bool,
}

impl Found {
    /// One more sorting or cull; what it lost as nobody could expect.
    pub(crate) fn look(&mut self, looked: &Looked, rough: Option<Quantity>) -> Option<Mishap> {
        match looked {
            Looked::Sort(sort) => {
                self.sort(sort, rough);
                None
            }
            Looked::Cull(cull) => self.cull(cull, rough),
        }
    }

    /// One more sorting. A mere cull of more than was left unsorted throws out what had been found good;
    /// good timber beyond what was gathered means that more was there.
    fn sort(&mut self, sort: &Sort, rough: Option<Quantity>) {
        if let (Some(_), true) = (rough, sort.good.is_zero()) {
            let late = sort.culled.minus(self.there_unsorted(rough)).max(Quantity::ZERO);
            self.good = self.good.minus(late.min(self.there_good()));
        }
        self.good = self.good.plus(sort.good);
        self.throw_out(sort.culled, sort.link);
    }

    /// One more cull. Beyond what is known to be there: more was there, and that is gone too.
    fn cull(&mut self, cull: &Cull, rough: Option<Quantity>) -> Option<Mishap> {
        let (good, unsorted) = (self.there_good(), self.there_unsorted(rough));
        let of_good = match cull.link {
            Link::Milled => cull.quantity.min(good),
            Link::Gathered | Link::NailsOut => cull.quantity.minus(cull.quantity.min(unsorted)).min(good),
        };
        if !cull.unexpected {
            self.good = self.good.minus(of_good);
            self.throw_out(cull.quantity, cull.link);
            return None;
        }
        let rest = cull.quantity.minus(of_good);
        let of_unsorted = rest.min(unsorted);
        let more = rest.minus(of_unsorted);
        self.good = self.good.plus(more);
        let (of_good, entry) = (of_good.plus(more), cull.entry());
        self.lost_good = self.lost_good.plus(of_good);
        self.lost_unsorted = self.lost_unsorted.plus(of_unsorted);
        Some(Mishap { entry, good: of_good, unsorted: of_unsorted })
    }

    fn throw_out(&mut self, quantity: Quantity, link: Link) {
        self.culled = self.culled.plus(quantity);
        match link {
            Link::Gathered => self.as_gathered = self.as_gathered.plus(quantity),
            Link::NailsOut => {}
            Link::Milled => self.as_milled = self.as_milled.plus(quantity),
        }
    }

    /// Neither sorted nor culled, what was lost of it included.
    pub(crate) fn unsorted(&self, rough: Option<Quantity>) -> Quantity {
        rough.unwrap_or_default().minus(self.good).minus(self.culled).max(self.lost_unsorted)
    }

    /// Neither sorted nor culled, and there.
    pub(crate) fn there_unsorted(&self, rough: Option<Quantity>) -> Quantity {
        self.unsorted(rough).minus(self.lost_unsorted)
    }

    /// Sorted good and not lost since.
    pub(crate) fn there_good(&self) -> Quantity {
        self.good.minus(self.lost_good)
    }

    /// Lost in all.
    pub(crate) fn lost(&self) -> Quantity {
        self.lost_good.plus(self.lost_unsorted)
    }

    /// Thrown out at the sorting, its nails out.
    pub(crate) fn at_sorting(&self) -> Quantity {
        self.culled.minus(self.as_gathered).minus(self.as_milled)
    }

    /// Usable ÷ sorted, where something was sorted.
    pub(crate) fn yielded(&self) -> Option<Ratio> {
        let whole = self.good.plus(self.culled);
        Ratio::share(self.good.over(whole)?.to_decimal())
    }
}
