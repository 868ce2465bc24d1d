//! From what is typed to the entries of a lot: the item where it is new, the lot, the drive that fetched it.

use super::super::{form::Form, tax, thing};
use crate::{
    screens::{abroad, first_amount, journal::correct::trip},
    shell::desk::View,
    words::{lots as words, refusal},
};
use benchslate_core::{
    journal::{
        Body, Id, On,
        kinds::{Basis, Bearer, Item, Lot, Mark, NewStock, Origin, SuppliedBy, Trip, Use},
    },
    measure::{
        Dec, Dimension, Instant, Quantity, Refusal, Unit, Why,
        board::{Seasoning, Size},
        convert,
        coverage::Spread,
        day,
        letters::small,
        marks::{self, Hint},
        number,
    },
};

pub const NAME: &str = "lot-name";
pub const ROUGH: &str = "lot-rough";
pub const PAID: &str = "lot-paid";
pub const TAX: &str = "lot-tax";
pub const FEE: &str = "lot-fee";
pub const KM: &str = "lot-km";
pub const YIELD: &str = "lot-yield";
pub const NEW: &str = "lot-new";
pub const WASTE: &str = "lot-waste";
pub const NEW_TAX: &str = "lot-new-tax";
pub const WHENCE: &str = "lot-whence";
pub const SPECIES: &str = "lot-species";
pub const DAY: &str = "lot-day";
pub const TIN: &str = "lot-tin";
pub const LOW: &str = "lot-low";
pub const COVERS: &str = "lot-covers";
pub const THICK: &str = "lot-thick";
pub const WIDE: &str = "lot-wide";
pub const LONG: &str = "lot-long";
pub const BOARDS: &str = "lot-boards";
/// Choices, as codes.
pub const ORIGIN: &str = "origin";
pub const USE: &str = "use";
pub const SOLD: &str = "as-sold";
pub const TAX_BACK: &str = "tax-back";
pub const FOR: &str = "for";
pub const NEW_NOMINAL: &str = "new-nominal";
pub const BY: &str = "by";
pub const OXIDISES: &str = "oxidises";
pub const FOOD_SAFE: &str = "food-safe";
pub const MARK: &str = "mark";

/// The origins that can be chosen, in the order of the set.
pub const ORIGINS: [Origin; 4] = [Origin::Salvaged, Origin::Bought, Origin::Offcut, Origin::Supplied];
/// The uses, likewise.
pub const USES: [Use; 3] = [Use::Timber, Use::Fitting, Use::Consumable];

/// What is chosen: how it was come by.
pub fn origin(form: Form) -> Origin {
    // A line of a receipt was bought.
    let usual = if form.of.is_some() { Origin::Bought } else { Origin::Salvaged };
    chosen(form, ORIGIN, &ORIGINS, usual)
}

/// What is chosen: what it is for.
pub fn purpose(form: Form) -> Use {
    chosen(form, USE, &USES, Use::Timber)
}

fn chosen<T: Copy>(form: Form, field: &str, of: &[T], else_: T) -> T {
    form.get(field).parse::<usize>().ok().and_then(|at| of.get(at).copied()).unwrap_or(else_)
}

/// By whom a supplied lot is supplied.
pub fn by(form: Form) -> SuppliedBy {
    if on(form, BY) { SuppliedBy::Client } else { SuppliedBy::Sponsor }
}

/// The build that a lot is got for, as the form keeps it: a line of a receipt is for what the receipt was for, until
/// it is said otherwise.
pub fn for_code(view: &View, form: Form) -> String {
    let typed = form.get(FOR);
    let receipt = form.of.and_then(|of| view.shop.receipts.get(&of));
    match receipt.map(|receipt| receipt.bearer) {
        Some(Bearer::Build(build)) if typed.is_empty() => build.to_string(),
        _ => typed,
    }
}

/// Whether a switch is on.
pub fn on(form: Form, switch: &str) -> bool {
    form.get(switch) == "1"
}

/// What stands in the field of tax. To what is bought the shop's sales tax is offered, once there is a price
/// that it could be a share of; what is salvaged seldom has any.
pub fn tax_text(view: &View, form: Form, priced: bool) -> String {
    // On a receipt tax stands once, for all of its lines.
    if form.of.is_some() || origin(form) == Origin::Supplied {
        return String::new();
    }
    let bought = origin(form) == Origin::Bought;
    form.get_or(TAX, tax::offered(view).filter(|_| bought && priced))
}

/// The entries that a form comes to.
#[derive(Clone, PartialEq)]
pub struct Plan {
    pub item: Option<(Id, Item)>,
    pub lot: (Id, Lot),
    pub trip: Option<(Id, Trip)>,
}

impl Plan {
    /// As entries.
    pub fn entries(&self) -> Vec<(Id, Body)> {
        let item = self.item.iter().map(|(id, item)| (*id, Body::Item(item.clone())));
        let trip = self.trip.iter().map(|(id, trip)| (*id, Body::Trip(trip.clone())));
        let lot = (self.lot.0, Body::Lot(self.lot.1.clone()));
        item.chain([lot]).chain(trip).collect()
    }

    /// Whether money is in it.
    pub fn has_money(&self) -> bool {
        let lot = &self.lot.1;
        [lot.paid, lot.value, lot.fee, lot.tax].iter().any(Option::is_some) || lot.new.is_some()
    }
}

/// Reads a form. `loud`: what can't be read is said by its field; else it counts as not typed.
pub struct Reader<'a> {
    pub view: &'a View<'a>,
    pub form: Form,
    pub loud: bool,
    pub now: Instant,
    /// Ids for item, lot and trip.
    pub ids: [Id; 3],
}

/// How much came, in which measure.
struct Came {
    rough: Quantity,
    unit: Unit,
    word: Option<String>,
    basis: Option<Basis>,
    other: Option<Quantity>,
}

impl Reader<'_> {
    /// The plan; none where the name or the quantity is missing or something can't be read.
    pub fn plan(&self) -> Option<Plan> {
        let name = self.form.get(NAME).trim().to_owned();
        if name.is_empty() {
            self.wrong(NAME, words::no_name());
        } else if name.chars().count() > 80 {
            self.wrong(NAME, words::long_name());
            return None;
        }
        let plan = self.plan_of(&name)?;
        (!name.is_empty()).then_some(plan)
    }

    /// The same before it has a name.
    pub fn plan_unnamed(&self) -> Option<Plan> {
        self.plan_of(self.form.get(NAME).trim())
    }

    fn plan_of(&self, name: &str) -> Option<Plan> {
        let known = self.item(name);
        let came = self.came(known);
        self.lot(name, known, &came?)
    }

    /// The item of that name, for what is kept by the item.
    fn item(&self, name: &str) -> Option<Id> {
        let shop = self.view.shop;
        let purpose = purpose(self.form);
        // A name that was said to be another item's still means that item.
        let others = shop.merged.iter().map(|(id, merged)| (id, &merged.item));
        let mut alike = shop.items.iter().chain(others).filter(|(_, item)| item.purpose == purpose);
        let found = alike.find(|(_, item)| small(&item.name) == small(name));
        found.and_then(|(id, _)| shop.item_meant(*id))
    }

    fn came(&self, item: Option<Id>) -> Option<Came> {
        let text = self.form.get(ROUGH);
        if text.trim().is_empty() {
            if purpose(self.form) == Use::Timber && self.sizes_typed() {
                return self.by_size();
            }
            self.wrong(ROUGH, words::no_quantity());
            return None;
        }
        if purpose(self.form) == Use::Timber && self.sizes_typed() {
            self.wrong(ROUGH, words::quantity_or_sizes());
        }
        let unit = self.bare_unit(item);
        let hint = Hint { unit: Some(unit), gallons: first_amount::gallons() };
        let plain = |rough, unit, word| Came { rough, unit, word, basis: None, other: None };
        match marks::quantity(&text, hint) {
            Ok(typed) => {
                let typed_unit = typed.unit.unwrap_or(unit);
                let fits = item.is_none_or(|item| {
                    let source = benchslate_core::journal::kinds::Source::Item(item);
                    self.view.shop.in_stock_unit(source, typed.quantity(), typed_unit).is_some()
                });
                if !fits {
                    self.wrong(ROUGH, &words::kept_in(crate::words::units::short(unit)));
                    return None;
                }
                if typed.quantity().is_zero() {
                    self.wrong(ROUGH, words::nothing_came());
                    return None;
                }
                Some(plain(typed.quantity(), typed_unit, None))
            }
            Err(refusal) => {
                let own = own_word(&text).filter(|_| item.is_none() && purpose(self.form) != Use::Timber);
                match own.filter(|_| matches!(refusal.why, Why::UnknownUnit)) {
                    Some((rough, word)) => Some(plain(rough, Unit::Each, Some(word))),
                    None => {
                        self.refused(ROUGH, &refusal);
                        None
                    }
                }
            }
        }
    }

    /// What a bare number means.
    pub fn bare_unit(&self, item: Option<Id>) -> Unit {
        let kept = item.and_then(|item| self.view.shop.items.get(&item)).map(|item| item.unit);
        kept.unwrap_or_else(|| match purpose(self.form) {
            Use::Timber => first_amount::timber_unit(self.view),
            Use::Consumable if !self.form.get(TIN).trim().is_empty() => Unit::Tin,
            Use::Consumable | Use::Fitting => Unit::Each,
        })
    }

    /// What is kept under the typed name.
    pub fn known(&self) -> Option<Id> {
        self.item(self.form.get(NAME).trim())
    }

    fn sizes_typed(&self) -> bool {
        [THICK, WIDE, LONG, BOARDS].iter().any(|field| !self.form.get(field).trim().is_empty())
    }

    /// Board measure from sizes: as it is, or as it is sold; the other measure beside it.
    fn by_size(&self) -> Option<Came> {
        let inches = first_amount::in_inches(self.view);
        let section = if inches { Unit::Inch } else { Unit::Millimetre };
        let long = if inches { Unit::Foot } else { Unit::Metre };
        let sides = [(THICK, section), (WIDE, section), (LONG, long)].map(|(field, unit)| {
            let hint = Hint { unit: Some(unit), ..Hint::default() };
            self.read(field, |text| marks::quantity(text, hint)).or_else(|| self.missing(field))
        });
        let boards = match self.form.get(BOARDS).trim() {
            "" => Some(1),
            _ => self.read(BOARDS, number::whole),
        };
        let [Some(thick), Some(wide), Some(long)] = sides else { return None };
        let size = match Size::typed(thick, wide, long) {
            Ok(size) => size,
            Err(refusal) => {
                self.refused(THICK, &refusal);
                return None;
            }
        };
        let boards = boards?;
        if !inches {
            return self.in_cubic_metres(size.true_volume(boards));
        }
        let (basis, rough, other) = if on(self.form, SOLD) {
            let wood = size.dressed(Seasoning::Dry).and_then(|dressed| dressed.true_volume(boards));
            (Basis::Nominal, size.board_measure(boards), wood)
        } else {
            let sold = size.sold_as(Seasoning::Dry).and_then(|sold| sold.board_measure(boards));
            (Basis::Actual, size.true_volume(boards), sold)
        };
        let Some(rough) = rough.filter(|it| !it.is_zero()) else {
            self.wrong(THICK, words::nothing_came());
            return None;
        };
        Some(Came { rough, unit: Unit::BoardFoot, word: None, basis: Some(basis), other })
    }

    /// Metric yards sell what is there: no nominal measure beside it.
    fn in_cubic_metres(&self, board_feet: Option<Quantity>) -> Option<Came> {
        let rough = board_feet.and_then(|it| convert(it, Unit::BoardFoot, Unit::CubicMetre));
        let Some(rough) = rough.filter(|it| !it.is_zero()) else {
            self.wrong(THICK, words::nothing_came());
            return None;
        };
        Some(Came { rough, unit: Unit::CubicMetre, word: None, basis: Some(Basis::Actual), other: None })
    }

    fn missing<T>(&self, field: &'static str) -> Option<T> {
        if self.form.get(field).trim().is_empty() {
            self.wrong(field, words::side_missing());
        }
        None
    }

    fn lot(&self, name: &str, known: Option<Id>, came: &Came) -> Option<Plan> {
        let [item_id, lot_id, trip_id] = self.ids;
        let (origin, purpose) = (origin(self.form), purpose(self.form));
        let at = self.day();
        let by_item = purpose != Use::Timber || known.is_some();
        let new_item = (by_item && known.is_none()).then(|| self.new_item(name, purpose, came, at));
        let offcut = origin == Origin::Offcut;
        let salvaged = origin == Origin::Salvaged;
        let supplied = (origin == Origin::Supplied).then(|| by(self.form));
        let paid = self.money(PAID).filter(|_| !offcut && supplied != Some(SuppliedBy::Client));
        let receipt = self.form.of.and_then(|of| self.view.shop.receipts.get(&of));
        let tax = self.tax(paid).filter(|_| !offcut);
        let km = self.read(KM, number::amount).filter(|_| salvaged).filter(|km| !km.is_zero());
        let trip = km.map(|km| Trip {
            on: at,
            km: Dec(km),
            fee: None,
            shares: trip::with_lot(self.form, Bearer::Lot(lot_id), self.loud),
        });
        let lot = Lot {
            abroad: (self.loud && paid.is_some()).then(|| abroad::read(self.form)).flatten(),
            on: at,
            item: known.or_else(|| new_item.is_some().then_some(item_id)),
            name: if by_item { String::new() } else { name.to_owned() },
            purpose,
            origin,
            rough: came.rough.into(),
            unit: came.unit,
            basis: came.basis,
            other_measure: came.other.map(Dec::from),
            paid: paid.filter(|_| supplied.is_none()),
            value: paid.filter(|_| supplied.is_some()),
            by: supplied,
            receipt: self.form.of,
            fee: self.money(FEE).filter(|_| salvaged),
            freight: None,
            discount: None,
            tax,
            tax_back: tax.is_some() && on(self.form, TAX_BACK),
            for_build: self.for_build().filter(|_| !by_item),
            expected_yield: self.share(YIELD).filter(|_| salvaged),
            new: self.new_stock(came).filter(|_| salvaged),
            whence: Some(self.form.get(WHENCE).trim().to_owned())
                .filter(|it| !it.is_empty())
                .or_else(|| receipt.and_then(|receipt| receipt.whence.clone())),
            species: Some(self.form.get(SPECIES).trim().to_owned())
                .filter(|it| !it.is_empty() && salvaged && purpose == Use::Timber),
            mark: mark(self.form).filter(|_| salvaged && purpose == Use::Timber),
        };
        let item = new_item.map(|item| (item_id, item));
        (!self.loud || !self.form.is_wrong()).then(|| Plan {
            item,
            lot: (lot_id, lot),
            trip: trip.map(|trip| (trip_id, trip)),
        })
    }

    fn new_item(&self, name: &str, purpose: Use, came: &Came, at: On) -> Item {
        let content = self.read(TIN, |text| marks::quantity(text, Hint::default()));
        let content = content.filter(|_| came.unit.dimension() == Dimension::Pack);
        let unit = content.and_then(|it| it.unit);
        if content.is_some() && unit.is_none() {
            self.wrong(TIN, words::tin_needs_unit());
        }
        let low =
            self.read(LOW, |text| marks::quantity(text, Hint { unit: Some(came.unit), ..Hint::default() }));
        let finish = purpose == Use::Consumable;
        let covers = self.read(COVERS, |text| spread(self.view, text, came.unit)).filter(|_| finish);
        Item {
            word: came.word.clone(),
            content: content.map(|it| it.quantity().into()),
            content_unit: unit,
            low: low.map(|it| it.quantity().into()),
            covers: covers.map(|it| it.area.into()),
            covers_unit: covers.map(|it| it.unit),
            covers_per: covers.map(|it| it.per),
            oxidises: (finish && on(self.form, OXIDISES)).then_some(true),
            food_safe: (finish && on(self.form, FOOD_SAFE)).then_some(true),
            ..Item::named(at, name, purpose, came.unit)
        }
    }

    fn new_stock(&self, came: &Came) -> Option<NewStock> {
        let (price, waste, tax) = (self.money(NEW), self.share(WASTE), self.share(NEW_TAX));
        if price.is_none() && (waste.is_some() || tax.is_some()) {
            // Of what? Left out, what was typed would be lost without a word.
            self.wrong(NEW, words::price_new_first());
        }
        let price = price?;
        let nominal = on(self.form, NEW_NOMINAL) && came.other.is_some();
        Some(NewStock {
            price,
            waste,
            tax,
            delivery: None,
            basis: nominal.then_some(Basis::Nominal).or(came.basis),
            seen: None,
            on: self.day().day(&self.view.shop.zone),
        })
    }

    /// The day that is typed; else this moment.
    fn day(&self) -> On {
        let zone = &self.view.shop.zone;
        let today = zone.day(self.now);
        let typed = self.read(DAY, |text| day::typed_near(text, today)).filter(|day| *day != today);
        let till = self.form.of.and_then(|of| self.view.journal.body(of)).map(Body::on);
        typed.map(On::Day).or(till).unwrap_or_else(|| On::At(zone.when(self.now)))
    }

    fn for_build(&self) -> Option<Id> {
        Id::parse(&for_code(self.view, self.form))
    }

    fn money(&self, field: &'static str) -> Option<Dec> {
        self.read(field, number::amount).map(Dec)
    }

    fn share(&self, field: &'static str) -> Option<Dec> {
        let share = self.read(field, if field == YIELD { number::part } else { number::percent })?;
        let most = field != NEW_TAX;
        if most && share > 1.into() {
            self.wrong(field, words::over_hundred());
            return None;
        }
        if field == WASTE && share == 1.into() {
            self.wrong(field, words::all_wasted());
            return None;
        }
        Some(Dec(share))
    }

    /// `9.43`, or `13 %` of what was paid.
    fn tax(&self, paid: Option<Dec>) -> Option<Dec> {
        tax::read(self.view, &tax_text(self.view, self.form, paid.is_some()), paid).unwrap_or_else(
            |sentence| {
                self.wrong(TAX, &sentence);
                None
            },
        )
    }

    fn read<T>(&self, field: &'static str, read: impl FnOnce(&str) -> Result<T, Refusal>) -> Option<T> {
        let text = self.form.get(field);
        if text.trim().is_empty() {
            return None;
        }
        read(&text).map_err(|refusal| self.refused(field, &refusal)).ok()
    }

    fn refused(&self, field: &'static str, refusal: &Refusal) {
        self.wrong(field, &refusal::sentence(refusal));
    }

    fn wrong(&self, field: &'static str, sentence: &str) {
        if self.loud {
            self.form.wrong(field, sentence.to_owned());
        }
    }
}

/// What a finish covers, as it is typed: `12 m² a litre`.
pub fn spread(view: &View, text: &str, per: Unit) -> Result<Spread, Refusal> {
    let unit = if first_amount::in_inches(view) { Unit::SquareFoot } else { Unit::SquareMetre };
    Spread::typed(text, Hint { unit: Some(unit), gallons: first_amount::gallons() }, per)
}

/// The treatment marks, in the order of the set.
pub const MARKS: [Mark; 5] = [Mark::None, Mark::Ht, Mark::Dh, Mark::Mb, Mark::Sf];

/// The mark that is chosen; none until one is.
pub fn mark(form: Form) -> Option<Mark> {
    form.get(MARK).parse::<usize>().ok().and_then(|at| MARKS.get(at).copied())
}

/// Items that what is typed could mean, of the chosen use.
pub fn items_found(view: &View, purpose: Use, text: &str) -> Vec<(Id, String)> {
    let found = view.shop.items.iter().filter(|(id, item)| {
        item.purpose == purpose
            && view.shop.offers(**id)
            && thing::is_found(&item.name, text)
            && small(&item.name) != small(text.trim())
    });
    found.map(|(id, item)| (*id, item.name.clone())).take(3).collect()
}

/// `16 discs`: a number and the maker's own word, kept in the singular.
pub fn own_word(text: &str) -> Option<(Quantity, String)> {
    let (figure, word) = text.trim().split_once(char::is_whitespace)?;
    let amount = number::amount(figure).ok().and_then(|it| Dec(it).quantity())?;
    let word = small(word.trim());
    let letters = word.chars().all(|c| c.is_alphabetic() || c == '-' || c == ' ');
    if !letters || word.is_empty() || word.chars().count() > 20 {
        return None;
    }
    let one = match word.strip_suffix('s') {
        Some(stem) if stem.chars().count() > 2 && !stem.ends_with(['s', 'i', 'u']) => stem.to_owned(),
        _ => word,
    };
    Some((amount, one))
}

#[cfg(test)]
mod tests {
    use super::own_word;

    #[track_caller]
    fn check(text: &str, want: Option<(&str, &str)>) {
        let got = own_word(text).map(|(amount, word)| (amount.shown_trimmed(), word));
        assert_eq!(got, want.map(|(amount, word)| (amount.to_owned(), word.to_owned())));
    }

    #[test]
    fn the_makers_own_word_is_kept_for_one() {
        check("16 discs", Some(("16", "disc")));
        check("2 brass", Some(("2", "brass")));
        check("1 hinge", Some(("1", "hinge")));
        check("discs", None);
        check("3 7/8", None);
        check("1,234 discs", None);
    }
}
