//! What entries about publishing say: chapters, those outside, what is owed.

use super::facts::{Fact, Facts, bearer};
use crate::{
    shell::desk::View,
    words::{
        journal::{self as words, Label},
        publishing as said,
    },
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{self, Bearer},
    },
    measure::film_time,
};

impl Facts<'_> {
    pub(super) fn chapter(&self, it: &kinds::Chapter) -> Vec<Fact> {
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::Name, it.title.clone()),
            (Label::AtTime, film_time::shown(it.at)),
        ]
    }

    pub(super) fn outsider(&self, it: &kinds::Outsider) -> Vec<Fact> {
        let week: Vec<&str> = it.week.iter().map(|day| said::short_weekday(*day)).collect();
        let off = it.off.iter().map(|day| self.view.tongue.day_year(*day));
        vec![
            (Label::Name, it.name.clone()),
            (Label::ToTheShop, said::outsider_kind(it.kind).to_owned()),
            (Label::Week, week.join(" ")),
            (Label::DayOff, off.collect::<Vec<String>>().join("; ")),
        ]
    }

    pub(super) fn due(&self, it: &kinds::Due) -> Vec<Fact> {
        let day = |day: Option<benchslate_core::measure::Day>| {
            day.map(|day| self.view.tongue.day_year(day)).unwrap_or_default()
        };
        let from = it.after.map(|after| super::line::what(self.view, after));
        vec![
            (Label::Of, bearer(self.view, Bearer::Build(it.build))),
            (Label::What, said::due_what(it.what).to_owned()),
            (Label::Text, it.words.clone().unwrap_or_default()),
            (Label::ByDay, day(it.day)),
            (
                Label::LeadDays,
                it.lead.map(|it| said::so_many_days(it.days, it.of, it.later)).unwrap_or_default(),
            ),
            (Label::CountsFrom, from.unwrap_or_default()),
            (Label::ToWhom, it.outsider.map(|id| outsider(self.view, id)).unwrap_or_default()),
            (Label::DoneOn, day(it.done)),
        ]
    }
}

/// Somebody outside by name.
pub fn outsider(view: &View, id: Id) -> String {
    view.shop.outsiders.get(&id).map_or_else(|| words::gone().to_owned(), |it| it.name.clone())
}

/// What is owed, in the maker's words where there are some.
pub fn due(it: &kinds::Due) -> String {
    it.words.clone().unwrap_or_else(|| said::due_what(it.what).to_owned())
}
