//! Which shots can be chapters, in the order in which they were taken, and where such a chapter can begin.
//!
//! A shot comes by its first keeper, else by its last take; one that was left out, or never taken, does not. A shot whose
//! words are a chapter already is that chapter, whatever the size of letters and the spaces; of several shots with the
//! same words the first taken is the first. Where one begins nobody knows but who cut the film. Source: our own rule.
//! Not here: how a time is typed (`measure::film_time`).

use super::{length, plain};
use crate::{
    journal::{Id, Shop, kinds, order::Order, shop::Chapter},
    measure::{InOrder, Map, letters::small},
};

/// A shot that was taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The shot.
    pub shot: Id,
    /// Its words, on one line.
    pub title: String,
    /// Its step, while that stands.
    pub step: Option<Id>,
    /// What the camera calls the clip.
    pub clip: Option<String>,
}

/// Why a chapter can't begin where it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Misfit {
    /// Another begins there.
    SameTime {
        /// What that is called.
        title: String,
    },
    /// The film is over by then.
    BeyondEnd {
        /// Its length in seconds.
        length: u32,
    },
    /// One that was taken earlier begins later.
    BeforeEarlier {
        /// What that is called.
        title: String,
        /// Where it begins.
        at: u32,
    },
    /// One that was taken later begins earlier.
    AfterLater {
        /// What that is called.
        title: String,
        /// Where it begins.
        at: u32,
    },
}

/// The shots of a build that can still become chapters, as they were taken.
pub fn from_takes(shop: &Shop, build: Id) -> Vec<Taken> {
    let open = |(taken, chapter): (Taken, Option<&Chapter>)| chapter.is_none().then_some(taken);
    all(shop, build).into_iter().filter_map(open).collect()
}

/// The next of them after a shot.
pub fn next_after(shop: &Shop, shot: Id) -> Option<Id> {
    let build = shop.shots.get(&shot)?.body.build;
    let mut later = all(shop, build).into_iter().skip_while(|(it, _)| it.shot != shot).skip(1);
    later.find(|(_, chapter)| chapter.is_none()).map(|(it, _)| it.shot)
}

/// Whether a chapter can begin where it does. `entry`: its own; `shot`: the one that it is of, where it is a new one.
///
/// # Errors
/// [`Misfit`].
pub fn fits(shop: &Shop, chapter: &kinds::Chapter, entry: Id, shot: Option<Id>) -> Result<(), Misfit> {
    let (build, at) = (chapter.build, chapter.at);
    let title = |it: &Chapter| it.body.title.clone();
    let others = shop.chapters_of(build);
    if let Some(other) = others.iter().find(|it| it.body.at == at && it.order.entry != entry) {
        return Err(Misfit::SameTime { title: title(other) });
    }
    if let Some(length) = length(shop, build).filter(|length| at >= *length) {
        return Err(Misfit::BeyondEnd { length });
    }
    let all = all(shop, build);
    let Some(place) = all.iter().position(|(it, _)| Some(it.shot) == shot) else { return Ok(()) };
    let chapters = |of: &[(Taken, Option<&Chapter>)]| -> Vec<(u32, String)> {
        of.iter().filter_map(|(_, it)| it.map(|it| (it.body.at, title(it)))).collect()
    };
    let (earlier, later) = all.split_at(place);
    if let Some((begins, title)) = chapters(earlier).into_iter().max().filter(|it| it.0 > at) {
        return Err(Misfit::BeforeEarlier { title, at: begins });
    }
    let later = later.get(1..).unwrap_or_default();
    match chapters(later).into_iter().min().filter(|it| it.0 < at) {
        Some((begins, title)) => Err(Misfit::AfterLater { title, at: begins }),
        None => Ok(()),
    }
}

/// All that were taken, each with the chapter that it is.
fn all(shop: &Shop, build: Id) -> Vec<(Taken, Option<&Chapter>)> {
    let mut best: Map<Id, (Order, bool, Option<String>)> = Map::new();
    for take in &shop.takes {
        if best.get(&take.shot).is_none_or(|(_, keep, _)| !keep) {
            best.insert(take.shot, (take.order, take.keep, take.clip.clone()));
        }
    }
    let mut taken: Vec<(Order, Taken)> = Vec::new();
    for (id, shot) in shop.shots.iter().filter(|(_, it)| it.body.build == build) {
        let title = plain(&shot.body.what);
        let Some((order, _, clip)) = best.remove(id).filter(|_| shot.body.waived.is_none()) else { continue };
        if !title.is_empty() {
            let step = shot.body.step.filter(|step| shop.steps.contains_key(step));
            taken.push((order, Taken { shot: *id, title, step, clip }));
        }
    }
    taken.order_by_key(|(order, _)| *order);
    let folded = |title: &str| small(&plain(title));
    let mut chapters: Vec<(String, &Chapter)> =
        shop.chapters_of(build).into_iter().map(|it| (folded(&it.body.title), it)).collect();
    let pair = |(_, taken): (Order, Taken)| {
        let words = folded(&taken.title);
        let at = chapters.iter().position(|(title, _)| *title == words);
        (taken, at.map(|at| chapters.remove(at).1))
    };
    taken.into_iter().map(pair).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        exchange::chapters::{list, of_build, vtt},
        fixture::{Fixture, fixture},
        journal::{Change, On},
    };

    const TRAYS: &str = "
        person Ana 26
        build trays
        step sand trays sand
        step coat trays finish after sand
        shot stack trays
        shot wipe trays step coat
        shot grit trays step sand takes 2
        shot drips trays step coat waived 2026-02-03
        shot cured trays step coat
        take grit time 09:00 clip c1
        take grit time 09:05 clip c2 keep
        take grit time 09:10 clip c3
        take drips time 09:15 clip c4
        take wipe time 09:20 clip c5
        take wipe time 09:30 clip c6
        take stack time 09:07
    ";

    fn said(shop: &Shop, it: &Fixture) -> Vec<String> {
        let say = |one: &Taken| {
            let step = one.step.map(|step| it.name(step)).unwrap_or_default();
            format!("{}: {step} {}", one.title, one.clip.as_deref().unwrap_or_default())
        };
        from_takes(shop, it.id("trays")).iter().map(say).collect()
    }

    fn chapter(it: &Fixture, title: &str, at: u32) -> kinds::Chapter {
        let on = On::Day(it.zone.day(it.end()));
        kinds::Chapter { on, build: it.id("trays"), title: title.to_owned(), at }
    }

    fn keep(it: &mut Fixture, number: u8, title: &str, at: u32) {
        let body = chapter(it, title, at);
        it.write(Change::write(Id::of([number; 16]), body));
    }

    #[test]
    fn shots_come_by_their_keepers_in_the_order_of_the_takes() {
        let it = fixture(TRAYS);
        let shop = it.shop();
        // The keeper of the grit was taken before the stack, its last take after; the wipe has none, so its last counts.
        assert_eq!(said(&shop, &it), ["grit: sand c2", "stack:  ", "wipe: coat c6"]);
        assert_eq!(next_after(&shop, it.id("grit")), Some(it.id("stack")));
        assert_eq!(next_after(&shop, it.id("wipe")), None);
        assert_eq!(next_after(&shop, it.id("drips")), None, "it was left out");
    }

    #[test]
    fn what_is_a_chapter_by_its_words_is_not_proposed_again() {
        let mut it = fixture(TRAYS);
        keep(&mut it, 0x71, " STACK ", 60);
        let shop = it.shop();
        assert_eq!(said(&shop, &it), ["grit: sand c2", "wipe: coat c6"]);
        assert_eq!(next_after(&shop, it.id("grit")), Some(it.id("wipe")));
        // With other words it is still one of the takes, and what comes after it is found all the same.
        keep(&mut it, 0x71, "A pile of trays", 60);
        let shop = it.shop();
        assert_eq!(said(&shop, &it), ["grit: sand c2", "stack:  ", "wipe: coat c6"]);
        assert_eq!(next_after(&shop, it.id("stack")), Some(it.id("wipe")));
    }

    #[test]
    fn two_shots_with_the_same_words_are_two_chapters() {
        let text = "
            build trays
            shot wide trays
            shot close trays
            take wide time 09:00
            take close time 09:10
        ";
        let mut it = fixture(text);
        let close = it.id("close");
        let Some(crate::journal::Body::Shot(shot)) = it.journal.last_body(close) else { panic!("a shot") };
        let same = kinds::Shot { what: "wide".to_owned(), ..shot.clone() };
        it.write(Change::write(close, same));
        assert_eq!(said(&it.shop(), &it), ["wide:  ", "wide:  "]);
        keep(&mut it, 0x71, "wide", 0);
        assert_eq!(
            from_takes(&it.shop(), it.id("trays")).iter().map(|it| it.shot).collect::<Vec<_>>(),
            [close]
        );
    }

    #[test]
    fn typed_in_the_order_of_the_takes_list_and_file_hold_them_in_order() {
        let mut it = fixture(TRAYS);
        it.add("film trays finished 10");
        for (number, at) in [(0x71, 0), (0x72, 95), (0x73, 400)] {
            let next = from_takes(&it.shop(), it.id("trays")).remove(0);
            let body = chapter(&it, &next.title, at);
            assert_eq!(fits(&it.shop(), &body, Id::of([number; 16]), Some(next.shot)), Ok(()));
            keep(&mut it, number, &next.title, at);
        }
        let shop = it.shop();
        assert_eq!(said(&shop, &it), [""; 0]);
        let marks = of_build(&shop, it.id("trays"));
        let length = length(&shop, it.id("trays"));
        assert_eq!(list(&marks, length).unwrap(), "0:00 grit\n1:35 stack\n6:40 wipe");
        let want = "WEBVTT\n\n00:00:00.000 --> 00:01:35.000\ngrit\n\n00:01:35.000 --> 00:06:40.000\nstack\n\n\
                    00:06:40.000 --> 00:10:00.000\nwipe\n";
        assert_eq!(vtt(&marks, length).unwrap(), want);
    }

    #[test]
    fn a_time_out_of_order_or_beyond_the_film_does_not_fit() {
        let mut it = fixture(TRAYS);
        it.add("film trays finished 10");
        keep(&mut it, 0x71, "grit", 60);
        keep(&mut it, 0x72, "wipe", 300);
        let shop = it.shop();
        let new = Id::of([0x73; 16]);
        let of = |at, shot| fits(&shop, &chapter(&it, "stack", at), new, shot);
        let stack = Some(it.id("stack"));
        let (grit, wipe) = ("grit".to_owned(), "wipe".to_owned());
        assert_eq!(of(59, stack), Err(Misfit::BeforeEarlier { title: grit.clone(), at: 60 }));
        assert_eq!(of(60, stack), Err(Misfit::SameTime { title: grit }));
        assert_eq!(of(61, stack), Ok(()));
        assert_eq!(of(301, stack), Err(Misfit::AfterLater { title: wipe, at: 300 }));
        assert_eq!(of(599, None), Ok(()), "one of no shot may begin anywhere in the film");
        assert_eq!(of(600, None), Err(Misfit::BeyondEnd { length: 600 }));
        let itself = fits(&shop, &chapter(&it, "grit", 60), Id::of([0x71; 16]), None);
        assert_eq!(itself, Ok(()), "it stands where it stood");
    }
}
