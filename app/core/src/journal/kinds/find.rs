//! Timber that was looked at and is not home: what it would come to, badly, usually and well.

use super::{Basis, Bearer, Lot, Mark, NewStock, Origin, Share, Trip, Use};
use crate::{
    journal::{Id, On},
    measure::{Dec, Unit},
};
use serde::{Deserialize, Serialize};

/// One way it may go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Case {
    /// Share that would be usable, 0 to 1.
    pub usable: Dec,
    /// Minutes to reclaim a board; where no boards are counted, all of it.
    pub minutes: u32,
}

/// The three ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Cases {
    /// If it goes badly.
    pub badly: Case,
    /// As it usually goes.
    pub usually: Case,
    /// If it goes well.
    pub well: Case,
}

/// Where it was seen, how much there is, what is asked for it, and how it may go.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Find {
    /// When it was looked at.
    pub on: On,
    /// What it is.
    pub name: String,
    /// Where it stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub whence: Option<String>,
    /// Its species.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub species: Option<String>,
    /// How many boards; none: not counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub boards: Option<u32>,
    /// How much, as it stands.
    pub rough: Dec,
    /// In which unit.
    pub unit: Unit,
    /// In which measure `rough` is; none: actual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    /// The same in the other measure, where both are known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_measure: Option<Dec>,
    /// What is asked for it. None where nobody said yet: a gap, not 0.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked: Option<Dec>,
    /// Fees at the place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fee: Option<Dec>,
    /// Kilometres to fetch it, there and back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub km: Option<Dec>,
    /// How it may go.
    pub cases: Cases,
    /// The same thing new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub new: Option<NewStock>,
    /// The treatment mark of old packaging; none: nobody looked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<Mark>,
    /// The lot that it became when it was taken home.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lot: Option<Id>,
}

impl Find {
    /// The lot that it becomes, taken home at a moment.
    pub fn taken(&self, on: On) -> Lot {
        Lot {
            on,
            item: None,
            name: self.name.clone(),
            purpose: Use::Timber,
            origin: Origin::Salvaged,
            rough: self.rough,
            unit: self.unit,
            basis: self.basis,
            other_measure: self.other_measure,
            paid: self.asked,
            fee: self.fee,
            freight: None,
            discount: None,
            tax: None,
            tax_back: false,
            for_build: None,
            expected_yield: Some(self.cases.usually.usable),
            new: self.new.clone(),
            receipt: None,
            value: None,
            by: None,
            mark: self.mark,
            whence: self.whence.clone(),
            species: self.species.clone(),
            abroad: None,
        }
    }

    /// The drive that fetches it; none: it costs no drive.
    pub fn drive(&self, on: On, lot: Id) -> Option<Trip> {
        let km = self.km.filter(|km| *km != Dec::default())?;
        Some(Trip { on, km, fee: None, shares: vec![Share { bearer: Bearer::Lot(lot), parts: 1 }] })
    }
}
