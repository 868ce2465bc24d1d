//! One acquisition: so much, from there, for so much.

use super::{Abroad, Use};
use crate::{
    journal::{Id, On},
    measure::{Day, Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// How a lot was come by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Origin {
    /// Taken out of something old.
    Salvaged,
    /// Bought new or used, ready to use.
    Bought,
    /// By a sponsor or a client.
    Supplied,
    /// Left from an earlier build.
    Offcut,
}

/// Who supplied a lot. A sponsor's goods have a value; of a client's own only the quantity is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SuppliedBy {
    /// A sponsor.
    Sponsor,
    /// A client: no money anywhere.
    Client,
}

/// What the mark on a piece of old packaging says was done against pests (ISPM 15, annex 1).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// There is none.
    None,
    /// Heat.
    Ht,
    /// Dielectric heating: microwaves or radio frequency.
    Dh,
    /// Methyl bromide.
    Mb,
    /// Sulphuryl fluoride.
    Sf,
}

/// In which measure timber is counted. New softwood is sold by nominal size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// By the size it is sold as.
    Nominal,
    /// By the wood that is there.
    Actual,
}

/// The same thing new: what the saving is measured against.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct NewStock {
    /// Money per unit of the lot, before tax.
    pub price: Dec,
    /// Share that getting it ready to cut would waste, 0 to less than 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub waste: Option<Dec>,
    /// Tax as a share: `0.13`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax: Option<Dec>,
    /// Delivery of the whole lot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub delivery: Option<Dec>,
    /// The measure in which it is sold; none: the lot's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    /// Where the price was seen.
    #[serde(default, rename = "where", skip_serializing_if = "Option::is_none")]
    pub seen: Option<String>,
    /// When it was noted.
    pub on: Day,
}

/// Bought, salvaged, supplied or left over.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lot {
    /// When it came.
    pub on: On,
    /// The item it is stock of; none: a lot by itself, drawn by name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub item: Option<Id>,
    /// Its name; may be empty where the item has one.
    #[serde(default)]
    pub name: String,
    /// What it is for.
    #[serde(rename = "use")]
    pub purpose: Use,
    /// How it was come by.
    pub origin: Origin,
    /// How much, as it came: rough where salvaged.
    pub rough: Dec,
    /// Unit of every quantity of this lot.
    pub unit: Unit,
    /// In which measure `rough` is; none: actual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    /// The same timber in the other measure, where both are known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_measure: Option<Dec>,
    /// Price or what was paid, before tax. None where it is not known yet: a gap, not 0.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid: Option<Dec>,
    /// Fees at the place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fee: Option<Dec>,
    /// Freight.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub freight: Option<Dec>,
    /// Discount.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub discount: Option<Dec>,
    /// Tax in money.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax: Option<Dec>,
    /// The tax can be got back, and then is no cost.
    #[serde(default)]
    pub tax_back: bool,
    /// The build that it was got for, if any.
    #[serde(default, rename = "for", skip_serializing_if = "Option::is_none")]
    pub for_build: Option<Id>,
    /// Share of a salvaged lot expected to be usable, more than 0 to 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expected_yield: Option<Dec>,
    /// The same thing new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub new: Option<NewStock>,
    /// The receipt that it is a line of: freight, discount and tax stand there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub receipt: Option<Id>,
    /// Of a supplied lot: what it is worth.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub value: Option<Dec>,
    /// Of a supplied lot: by whom; none: a sponsor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<SuppliedBy>,
    /// The treatment mark of old packaging; none: nobody looked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<Mark>,
    /// From whom or from where.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub whence: Option<String>,
    /// Its species.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub species: Option<String>,
    /// The same as a statement of another country shows it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub abroad: Option<Box<Abroad>>,
}

impl Lot {
    /// Nothing said of it but when it came: one piece, bought.
    pub fn bare(on: On) -> Lot {
        Lot {
            on,
            item: None,
            name: String::new(),
            purpose: Use::Fitting,
            origin: Origin::Bought,
            rough: Dec::default(),
            unit: Unit::Each,
            basis: None,
            other_measure: None,
            paid: None,
            fee: None,
            freight: None,
            discount: None,
            tax: None,
            tax_back: false,
            for_build: None,
            expected_yield: None,
            new: None,
            receipt: None,
            value: None,
            by: None,
            mark: None,
            whence: None,
            species: None,
            abroad: None,
        }
    }
}
