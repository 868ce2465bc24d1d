//! Items, lots, sorts and draws as facts: every quantity in the unit of the stock that it is of.

use super::{
    Field, Odd, Shared, Shop,
    facts::{money, money_or_zero, quantity},
    same::Items,
};
use crate::{
    journal::{
        Id,
        kinds::{self, Basis, Bearer, Mark, Origin, Side, Source, SuppliedBy, Use},
        order::Order,
    },
    measure::{Day, Dec, Money, Quantity, Ratio, Unit, convert, coverage::Spread},
};
use std::collections::BTreeMap;

/// Something kept in stock.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// As written on the shelf.
    pub name: String,
    /// What it is for.
    pub purpose: Use,
    /// What it is counted in.
    pub unit: Unit,
    /// The maker's own word for one of it.
    pub word: Option<String>,
    /// What one of it holds.
    pub content: Option<(Quantity, Unit)>,
    /// Say so when less than this is left.
    pub low: Option<Quantity>,
    /// What it covers with one coat.
    pub covers: Option<Spread>,
    /// It dries by taking up oxygen; none: nobody said.
    pub oxidises: Option<bool>,
    /// Its maker states it for contact with food.
    pub food_safe: bool,
    /// Where to get it, as the maker gives it.
    pub link: Option<String>,
}

impl Item {
    pub(super) fn read(body: &kinds::Item, tell: &mut dyn FnMut(Odd)) -> Item {
        let mut read = |stored: Option<Dec>| stored.and_then(|dec| quantity_or_told(dec, tell));
        let content = read(body.content).filter(|it| !it.is_zero()).zip(body.content_unit);
        let low = read(body.low);
        let area = read(body.covers).filter(|it| !it.is_zero()).zip(body.covers_unit);
        let covers =
            area.map(|(area, unit)| Spread { area, unit, per: body.covers_per.unwrap_or(body.unit) });
        Item {
            name: body.name.clone(),
            purpose: body.purpose,
            unit: body.unit,
            word: body.word.clone(),
            content,
            low,
            covers,
            oxidises: body.oxidises,
            food_safe: body.food_safe.unwrap_or(false),
            link: body.link.clone(),
        }
    }

    /// What one of it covers with one coat: a tin of 750 ml at 20 m² a litre covers 15 m². None: nobody said, or
    /// it was said of a measure that this is not counted in.
    pub fn one_covers(&self) -> Option<(Quantity, Unit)> {
        let Spread { area, unit, per } = self.covers?;
        let holds = || self.content.and_then(|(content, unit)| convert(content, unit, per));
        let one = convert(Quantity::ONE, self.unit, per).or_else(holds)?;
        Some((one.times(area)?, unit))
    }

    /// So much, typed in some unit, in this item's unit: 100 ml of a tin that holds 750 ml is 0.133333 tin.
    pub fn in_its_unit(&self, amount: Quantity, unit: Unit) -> Option<Quantity> {
        convert(amount, unit, self.unit).or_else(|| {
            let (content, content_unit) = self.content?;
            let amount = convert(amount, unit, content_unit)?;
            amount.over(content)
        })
    }
}

/// The same thing new.
#[derive(Clone, Debug, PartialEq)]
pub struct NewStock {
    /// Money per unit of the lot, before tax.
    pub price: Money,
    /// Wasted getting it ready to cut, 0 to less than 1.
    pub waste: Ratio,
    /// Tax as a share.
    pub tax: Ratio,
    /// Delivery of the whole lot.
    pub delivery: Money,
    /// The measure in which it is sold.
    pub basis: Basis,
    /// Where the price was seen.
    pub seen: Option<String>,
    /// When it was noted.
    pub on: Day,
}

/// One acquisition.
#[derive(Clone, Debug, PartialEq)]
pub struct Lot {
    /// Its place in time.
    pub order: Order,
    /// The item it is stock of.
    pub item: Option<Id>,
    /// The same as it was said, which may be another one now: what was typed for it is in that one's unit.
    pub said: Option<Id>,
    /// Its own name, or the item's.
    pub name: String,
    /// What it is for.
    pub purpose: Use,
    /// How it was come by.
    pub origin: Origin,
    /// How much, as it came, in `unit`; none where the number or the unit can't be.
    pub rough: Option<Quantity>,
    /// Unit of every quantity of this lot; the item's where it has one.
    pub unit: Unit,
    /// In which measure `rough` is.
    pub basis: Basis,
    /// The same timber in the other measure.
    pub other_measure: Option<Quantity>,
    /// What was paid, before tax; none where it is not known.
    pub paid: Option<Money>,
    /// Fees and freight.
    pub fees: Money,
    /// Discount.
    pub discount: Money,
    /// Tax that stays in the cost.
    pub tax: Money,
    /// Tax that can be got back.
    pub tax_back: Money,
    /// The build that it was got for.
    pub for_build: Option<Id>,
    /// Share expected to be usable.
    pub expected_yield: Option<Ratio>,
    /// The same thing new.
    pub new: Option<NewStock>,
    /// The treatment mark of old packaging.
    pub mark: Option<Mark>,
    /// From whom or from where.
    pub whence: Option<String>,
    /// Its species.
    pub species: Option<String>,
    /// The receipt that it is a line of.
    pub receipt: Option<Id>,
    /// What it bears of that receipt's freight, discount and tax.
    pub shared: Shared,
    /// A client's own goods: quantity only, no money anywhere.
    pub clients_own: bool,
}

impl Lot {
    pub(super) fn read(order: Order, body: &kinds::Lot, items: Items, tell: &mut dyn FnMut(Odd)) -> Lot {
        let said = body.item.filter(|id| items.meant(*id).is_some());
        let meant = said.and_then(|id| items.meant(id));
        let item = meant.map(|(_, item)| item);
        let unit = item.map_or(body.unit, |item| item.unit);
        let rough = quantity_or_told(body.rough, tell);
        let fits = rough.and_then(|rough| match said {
            Some(said) => items.in_its_unit(said, rough, body.unit),
            None => Some(rough),
        });
        if rough.is_some() && fits.is_none() {
            tell(Odd::UnitDoesNotFit);
        }
        let clients_own = body.origin == Origin::Supplied && body.by == Some(SuppliedBy::Client);
        let tax = if clients_own { Money::ZERO } else { money_or_zero(body.tax, tell) };
        let (tax, tax_back) = if body.tax_back { (Money::ZERO, tax) } else { (tax, Money::ZERO) };
        let name = if body.name.is_empty() {
            item.map(|it| it.name.clone()).unwrap_or_default()
        } else {
            body.name.clone()
        };
        Lot {
            order,
            item: meant.map(|(id, _)| id),
            said,
            name,
            purpose: item.map_or(body.purpose, |item| item.purpose),
            origin: body.origin,
            rough: fits,
            unit,
            basis: body.basis.unwrap_or(Basis::Actual),
            other_measure: body.other_measure.and_then(|dec| quantity_or_told(dec, tell)),
            // A supplied lot's value; older entries kept it where others keep the price.
            paid: if clients_own { None } else { paid(body.value.or(body.paid), tell) },
            fees: if clients_own {
                Money::ZERO
            } else {
                money_or_zero(body.fee, tell).plus(money_or_zero(body.freight, tell))
            },
            discount: money_or_zero(body.discount, tell),
            tax,
            tax_back,
            for_build: body.for_build,
            expected_yield: body.expected_yield.and_then(|dec| share(dec, tell)).filter(|it| !it.is_zero()),
            new: body.new.as_ref().and_then(|new| NewStock::read(new, tell)),
            mark: body.mark,
            whence: body.whence.clone(),
            species: body.species.clone(),
            receipt: body.receipt,
            shared: Shared::default(),
            clients_own,
        }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }

    /// What it cost at the till, without tax that can be got back. None where no price is known.
    pub fn till(&self) -> Option<Money> {
        let own = self.paid.map(|paid| paid.plus(self.fees).plus(self.tax).minus(self.discount));
        own.map(|own| own.plus(self.shared.cost()))
    }

    /// Tax that can be got back, its receipt's counted in.
    pub fn whole_tax_back(&self) -> Money {
        self.tax_back.plus(self.shared.tax_back)
    }
}

impl NewStock {
    pub(super) fn read(body: &kinds::NewStock, tell: &mut dyn FnMut(Odd)) -> Option<NewStock> {
        let waste = body.waste.and_then(|dec| share(dec, tell)).unwrap_or(Ratio::ZERO);
        if waste == Ratio::ONE {
            tell(Odd::OutOfRange(Field::Share));
            return None;
        }
        Some(NewStock {
            price: paid(Some(body.price), tell)?,
            waste,
            tax: body.tax.and_then(|dec| share(dec, tell)).unwrap_or(Ratio::ZERO),
            delivery: money_or_zero(body.delivery, tell),
            basis: body.basis.unwrap_or(Basis::Actual),
            seen: body.seen.clone(),
            on: body.on,
        })
    }
}

/// A draw or a return.
#[derive(Clone, Debug, PartialEq)]
pub struct Draw {
    /// Its place in time.
    pub order: Order,
    /// From which lot or item.
    pub from: Source,
    /// How much, in the unit of the lot or item; none where it can't be said.
    pub quantity: Option<Quantity>,
    /// As it was typed.
    pub typed: (Dec, Unit),
    /// What bears it.
    pub bearer: Bearer,
    /// What it is for.
    pub side: Side,
    /// The stage at which it was drawn.
    pub stage: Option<Id>,
    /// The draw that this comes back from.
    pub returns: Option<Id>,
}

impl Draw {
    pub(super) fn read(
        order: Order,
        body: &kinds::Draw,
        lots: &BTreeMap<Id, Lot>,
        items: Items,
        tell: &mut dyn FnMut(Odd),
    ) -> Draw {
        let typed = quantity_or_told(body.quantity, tell);
        let quantity = typed.and_then(|amount| in_stock_unit(amount, body.unit, body.from, lots, items));
        if typed.is_some() && quantity.is_none() {
            tell(Odd::UnitDoesNotFit);
        }
        Draw {
            order,
            from: meant(body.from, items),
            quantity,
            typed: (body.quantity, body.unit),
            bearer: body.bearer,
            side: body.side.unwrap_or(Side::Piece),
            stage: body.stage,
            returns: body.returns,
        }
    }

    /// The entry.
    pub fn entry(&self) -> Id {
        self.order.entry
    }
}

/// The item that is meant, where it is one that another was said to be.
pub(super) fn meant(from: Source, items: Items) -> Source {
    match from {
        Source::Item(id) => Source::Item(items.meant(id).map_or(id, |(id, _)| id)),
        Source::Lot(_) => from,
    }
}

/// So much of a lot or item in its own unit; as it is where the lot or item is not there.
pub(super) fn in_stock_unit(
    amount: Quantity,
    unit: Unit,
    from: Source,
    lots: &BTreeMap<Id, Lot>,
    items: Items,
) -> Option<Quantity> {
    match from {
        Source::Item(id) => items.in_its_unit(id, amount, unit),
        Source::Lot(id) => {
            let Some(lot) = lots.get(&id) else { return Some(amount) };
            match lot.said {
                Some(said) => items.in_its_unit(said, amount, unit),
                None => convert(amount, unit, lot.unit),
            }
        }
    }
}

impl Shop {
    /// So much of a lot or item, typed in some unit, in the unit that its stock is kept in. None: the unit
    /// doesn't fit.
    pub fn in_stock_unit(&self, from: Source, amount: Quantity, unit: Unit) -> Option<Quantity> {
        in_stock_unit(amount, unit, from, &self.lots, self.all_items())
    }
}

pub(super) fn quantity_or_told(stored: Dec, tell: &mut dyn FnMut(Odd)) -> Option<Quantity> {
    let read = quantity(stored);
    if read.is_none() {
        tell(Odd::OutOfRange(Field::Quantity));
    }
    read
}

pub(super) fn paid(stored: Option<Dec>, tell: &mut dyn FnMut(Odd)) -> Option<Money> {
    let read = money(stored?).filter(|it| !it.is_negative());
    if read.is_none() {
        tell(Odd::OutOfRange(Field::Money));
    }
    read
}

/// A share, 0 to 1.
pub(super) fn share(stored: Dec, tell: &mut dyn FnMut(Odd)) -> Option<Ratio> {
    let read = Ratio::share(stored.0);
    if read.is_none() {
        tell(Odd::OutOfRange(Field::Share));
    }
    read
}

#[cfg(test)]
mod tests {
    use super::*;

    /// `unit`, what one holds in millilitres, what is said of how much: what one covers in square metres.
    #[track_caller]
    fn one_covers(unit: Unit, holds: Option<&str>, said: (&str, Unit), want: Option<&str>) {
        let quantity = |text: &str| Dec::parse(text).unwrap().quantity().unwrap();
        let on = crate::journal::On::Day(Day::parse("2026-11-02").unwrap());
        let body = kinds::Item {
            content: holds.map(|text| Dec::parse(text).unwrap()),
            content_unit: Some(Unit::Millilitre),
            covers: Some(Dec::parse(said.0).unwrap()),
            covers_unit: Some(Unit::SquareMetre),
            covers_per: Some(said.1),
            ..kinds::Item::named(on, "Hard oil", Use::Consumable, unit)
        };
        let item = Item::read(&body, &mut |_| {});
        assert_eq!(item.one_covers(), want.map(|text| (quantity(text), Unit::SquareMetre)));
    }

    #[test]
    fn what_one_covers_goes_by_what_it_holds() {
        one_covers(Unit::Tin, Some("750"), ("20", Unit::Litre), Some("15"));
        one_covers(Unit::Tin, None, ("15", Unit::Tin), Some("15"));
        one_covers(Unit::Millilitre, None, ("12", Unit::Litre), Some("0.012"));
        one_covers(Unit::Litre, None, ("12", Unit::Litre), Some("12"));
        one_covers(Unit::Tin, None, ("12", Unit::Litre), None);
        one_covers(Unit::Kilogram, None, ("12", Unit::Litre), None);
        one_covers(Unit::Litre, None, ("0", Unit::Litre), None);
    }

    #[test]
    fn a_quantity_is_said_in_the_unit_of_its_stock() {
        let mut shop = Shop::default();
        let oil = Id::of([1; 16]);
        let quantity = |text: &str| Dec::parse(text).unwrap().quantity().unwrap();
        let item = Item {
            name: "Hard oil".into(),
            purpose: Use::Consumable,
            unit: Unit::Tin,
            word: None,
            content: Some((quantity("750"), Unit::Millilitre)),
            low: None,
            covers: None,
            oxidises: None,
            food_safe: false,
            link: None,
        };
        shop.items.insert(oil, item);
        let said = |amount, unit| shop.in_stock_unit(Source::Item(oil), quantity(amount), unit);
        assert_eq!(said("0.25", Unit::Tin), Some(quantity("0.25")));
        assert_eq!(said("0.3", Unit::Litre), Some(quantity("0.4")));
        assert_eq!(said("3", Unit::Inch), None);
    }
}
