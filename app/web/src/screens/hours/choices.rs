//! What a form offers: people, stages and bearers, the last used first.
//!
//! What was put away is not offered; what a form holds already (`keep`, its code) stays among its choices.

use crate::{
    parts::pick::Choosable,
    shell::desk::View,
    words::{cautions, common, gaps, journal as words},
};
use benchslate_core::journal::{
    Id,
    kinds::{Bearer, Mark, Source},
    shop::Stretch,
};
use benchslate_core::{
    measure::InOrder,
    timing::{bearers, likely},
};

/// Who works here.
pub fn people(view: &View, keep: &str) -> Vec<Choosable> {
    let mut used = last_used(view, |stretch| stretch.person);
    used.extend(view.shop.people.keys().copied());
    let named = |id: Id| Some((id.to_string(), view.shop.people.get(&id)?.name.clone()));
    offered(once(used), |id| view.shop.offers(*id), named, keep)
}

/// Kinds of work; those that were never used follow in the order of the picker.
pub fn stages(view: &View, keep: &str) -> Vec<Choosable> {
    let mut used = last_used(view, |stretch| stretch.stage);
    let mut all: Vec<(u8, Id)> = view.shop.stages.iter().map(|(id, stage)| (stage.place, *id)).collect();
    all.order();
    used.extend(all.into_iter().map(|(_, id)| id));
    let named = |id: Id| Some((id.to_string(), view.shop.stages.get(&id)?.name.clone()));
    offered(once(used), |id| view.shop.offers(*id), named, keep)
}

/// Builds, lots and the shop; those that nobody worked for follow, latest first, and last what is settled.
pub fn bearers(view: &View, keep: &str) -> Vec<Choosable> {
    let mut used = last_used(view, |stretch| stretch.bearer);
    let builds = view.shop.builds.iter().map(|(id, build)| (build.order, Bearer::Build(*id)));
    let lots = view.shop.lots.iter().map(|(id, lot)| (lot.order, Bearer::Lot(*id)));
    let mut all: Vec<_> = builds.chain(lots).collect();
    all.order_by(|a, b| b.cmp(a));
    used.extend(all.into_iter().map(|(_, bearer)| bearer));
    used.push(Bearer::Shop);
    let named = |bearer: Bearer| {
        let name = match bearer {
            Bearer::Build(id) => view.shop.builds.get(&id)?.title.clone(),
            Bearer::Lot(id) => {
                view.shop.lots.get(&id)?;
                gaps::name(view.shop, Source::Lot(id))
            }
            Bearer::Shop => common::the_shop().to_owned(),
        };
        Some((code(bearer), name))
    };
    let used = once(used);
    let settled = bearers::settled(view.shop, &used);
    let (last, mut used): (Vec<Bearer>, Vec<Bearer>) = used.into_iter().partition(|it| settled.contains(it));
    used.extend(last);
    offered(used, |bearer| likely::offers_bearer(view.shop, *bearer), named, keep)
}

fn offered<T: Copy>(
    all: Vec<T>,
    offers: impl Fn(&T) -> bool,
    named: impl Fn(T) -> Option<Choosable>,
    keep: &str,
) -> Vec<Choosable> {
    let named = all.into_iter().filter_map(|it| Some((offers(&it), named(it)?)));
    named.filter(|(offers, (code, _))| *offers || code == keep).map(|(_, choice)| choice).collect()
}

/// The same, and that it has no home yet.
pub fn homes(view: &View, keep: &str) -> Vec<Choosable> {
    let mut homes = bearers(view, keep);
    homes.push((NO_HOME.to_owned(), words::no_home().to_owned()));
    homes
}

/// Builds, latest first, and none of them.
pub fn builds(view: &View, keep: &str) -> Vec<Choosable> {
    let mut builds: Vec<_> =
        view.shop.builds.iter().map(|(id, build)| (build.order, *id, &build.title)).collect();
    builds.order_by_key(|build| std::cmp::Reverse(build.0));
    let named = |(_, id, title): (_, Id, &String)| Some((id.to_string(), title.clone()));
    let mut choices = vec![(String::new(), common::none().to_owned())];
    choices.extend(offered(builds, |build| view.shop.offers(build.1), named, keep));
    choices
}

/// The treatment marks of old packaging; first that nobody looked.
pub fn marks(_: &View, _: &str) -> Vec<Choosable> {
    let mut choices = vec![(String::new(), cautions::not_looked().to_owned())];
    choices
        .extend(MARKS.iter().map(|mark| (mark_code(*mark).to_owned(), cautions::of_mark(*mark).to_owned())));
    choices
}

const MARKS: [Mark; 5] = [Mark::None, Mark::Ht, Mark::Dh, Mark::Mb, Mark::Sf];

/// What a form keeps for a mark: its word.
pub fn mark_code(mark: Mark) -> &'static str {
    cautions::of_mark(mark)
}

/// The mark that a form has kept.
pub fn mark(code: &str) -> Option<Mark> {
    MARKS.into_iter().find(|mark| mark_code(*mark) == code)
}

/// What a form keeps for no home.
pub const NO_HOME: &str = "none";

/// What a form keeps for a bearer.
pub fn code(bearer: Bearer) -> String {
    match bearer {
        Bearer::Build(id) => format!("build.{id}"),
        Bearer::Lot(id) => format!("lot.{id}"),
        Bearer::Shop => "shop".to_owned(),
    }
}

/// The bearer that a form has kept.
pub fn bearer(code: &str) -> Option<Bearer> {
    if code == "shop" {
        return Some(Bearer::Shop);
    }
    let (kind, id) = code.split_once('.')?;
    let id = Id::parse(id)?;
    match kind {
        "build" => Some(Bearer::Build(id)),
        "lot" => Some(Bearer::Lot(id)),
        _ => None,
    }
}

fn last_used<T>(view: &View, of: impl Fn(&Stretch) -> T) -> Vec<T> {
    // The last hundred are enough to tell what is in use.
    view.shop.stretches.iter().rev().take(100).map(of).collect()
}

/// Each once, the first place counts.
fn once<T: PartialEq + Copy>(all: Vec<T>) -> Vec<T> {
    let mut once: Vec<T> = Vec::with_capacity(all.len());
    for it in all {
        if !once.contains(&it) {
            once.push(it);
        }
    }
    once
}
