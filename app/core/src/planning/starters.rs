//! Plain lists of steps by how a piece is built, for who has no earlier build to take them from.
//!
//! Which steps and in what order, where something dries and for how long: common practice of a furniture shop, marked so
//! on the sheet; the label of the glue or the finish says what holds. Hours are filled in where the maker's own builds
//! have taught them (`timing::estimates`), else left to be said.
//!
//! Not here: the words of a step, which are passed in.

use super::taken_over::fill;
use crate::{
    journal::{
        Id, On, Shop,
        kinds::{After, Role, Step},
        stages::standing_id,
    },
    measure::{Dec, Quantity, fixed},
    timing::estimates::Estimate,
};

/// How a piece is put together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Construction {
    /// Glued boards: a top, a shelf, a cutting board.
    Panel,
    /// Rails and legs: a table, a bench, a chair.
    Frame,
    /// A carcass, a drawer, a chest, a tray.
    Box,
    /// On the lathe.
    Turned,
    /// A frame with a seat or a back of stuff over it.
    Upholstered,
}

impl Construction {
    /// In the order in which they are offered.
    pub const ALL: [Construction; 5] = [
        Construction::Panel,
        Construction::Frame,
        Construction::Box,
        Construction::Turned,
        Construction::Upholstered,
    ];

    /// Steps on the piece, in their order.
    pub fn piece(self) -> &'static [Starter] {
        match self {
            Construction::Panel => &PANEL,
            Construction::Frame => &FRAME,
            Construction::Box => &BOX,
            Construction::Turned => &TURNED,
            Construction::Upholstered => &UPHOLSTERED,
        }
    }
}

/// What a step is called, where its stage does not say enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Called {
    /// As its stage.
    Stage,
    /// The first of two coats.
    FirstCoat,
    /// The second of two coats.
    SecondCoat,
    /// Seat and back.
    Upholster,
    /// The finished piece before the camera.
    ShootFinished,
    /// The edit until nothing moves any more.
    EditLock,
}

/// A step of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Starter {
    /// The standing stage, by its number.
    pub stage: u8,
    /// Its words.
    pub called: Called,
    /// Hours until the next may begin; it is then done in one go.
    pub dries: u8,
}

const MILL: Starter = plain(4);
const CUT: Starter = plain(5);
const JOINERY: Starter = plain(6);
const GLUE_UP: Starter = Starter { dries: 24, ..plain(7) };
const FLATTEN: Starter = plain(8);
const ASSEMBLE: Starter = plain(9);
const SAND: Starter = plain(10);
const FIRST_COAT: Starter = Starter { called: Called::FirstCoat, dries: 24, ..plain(11) };
const SECOND_COAT: Starter = Starter { called: Called::SecondCoat, dries: 24, ..plain(11) };
const COVER: Starter = Starter { called: Called::Upholster, ..plain(9) };

const PANEL: [Starter; 7] = [MILL, GLUE_UP, FLATTEN, CUT, SAND, FIRST_COAT, SECOND_COAT];
const FRAME: [Starter; 8] = [MILL, CUT, JOINERY, SAND, GLUE_UP, FIRST_COAT, SECOND_COAT, ASSEMBLE];
const BOX: [Starter; 9] = [MILL, CUT, JOINERY, GLUE_UP, FLATTEN, SAND, FIRST_COAT, SECOND_COAT, ASSEMBLE];
const TURNED: [Starter; 5] = [CUT, MILL, SAND, FIRST_COAT, SECOND_COAT];
const UPHOLSTERED: [Starter; 8] = [MILL, CUT, JOINERY, SAND, GLUE_UP, FIRST_COAT, SECOND_COAT, COVER];

const SHOOT: Starter = Starter { called: Called::ShootFinished, ..plain(17) };
const EDIT: Starter = plain(19);
const EDIT_LOCK: Starter = Starter { called: Called::EditLock, ..plain(19) };

const fn plain(stage: u8) -> Starter {
    Starter { stage, called: Called::Stage, dries: 0 }
}

/// What is to be planned.
#[derive(Clone, Copy, Debug)]
pub struct Wanted {
    /// How the piece is put together.
    pub construction: Construction,
    /// With the steps of its film: a first edit from its half on, then the finished piece before the camera, then the last.
    pub film: bool,
    /// For which build.
    pub build: Id,
    /// Who does all of it, until something else is said.
    pub who: Id,
    /// When it is written.
    pub on: On,
}

/// The steps, each under a `fresh` id and with the words of `called`. `learned`: what the maker's own builds took.
pub fn steps(
    shop: &Shop,
    wanted: Wanted,
    learned: &[(Id, Option<Estimate>)],
    called: &dyn Fn(Called, &str) -> String,
    fresh: &mut dyn FnMut() -> Id,
) -> Vec<(Id, Step)> {
    let piece = wanted.construction.piece();
    let mut steps: Vec<(Id, Step)> = Vec::new();
    let mut before: Option<(Id, u8)> = None;
    for starter in piece {
        let (id, step) = one(shop, wanted, *starter, before, called, fresh);
        before = Some((id, starter.dries));
        steps.push((id, step));
    }
    if wanted.film {
        // Of what was shot so far: at the half of the piece there is something to cut.
        let half = steps.get(steps.len().div_euclid(2)).map(|(id, _)| (*id, 0));
        let (first, edit) = one(shop, wanted, EDIT, half, called, fresh);
        steps.push((first, edit));
        let (shot, shoot) = one(shop, wanted, SHOOT, before, called, fresh);
        steps.push((shot, shoot));
        let (lock, mut last) = one(shop, wanted, EDIT_LOCK, Some((shot, 0)), called, fresh);
        last.after.push(After { step: first, wait: None });
        steps.push((lock, last));
    }
    let alone = |stage: Id, all: &[(Id, Step)]| all.iter().filter(|(_, it)| it.stage == stage).count() == 1;
    let stages: Vec<bool> = steps.iter().map(|(_, it)| alone(it.stage, &steps)).collect();
    for ((_, step), alone) in steps.iter_mut().zip(stages) {
        let told = learned.iter().find(|(stage, _)| *stage == step.stage && alone);
        if let Some(estimate) = told.and_then(|(_, it)| it.as_ref()) {
            fill(step, estimate);
        }
    }
    steps
}

fn one(
    shop: &Shop,
    wanted: Wanted,
    starter: Starter,
    before: Option<(Id, u8)>,
    called: &dyn Fn(Called, &str) -> String,
    fresh: &mut dyn FnMut() -> Id,
) -> (Id, Step) {
    let stage = standing_id(starter.stage);
    let fact = shop.stages.get(&stage);
    let name = fact.map(|it| it.name.as_str()).unwrap_or_default();
    let wait = |hours: u8| {
        (hours > 0).then(|| Dec::from(Quantity::from_micros(i128::from(hours).saturating_mul(fixed::SCALE))))
    };
    let step = Step {
        title: called(starter.called, name),
        who: vec![wanted.who],
        after: before.map(|(step, dries)| After { step, wait: wait(dries) }).into_iter().collect(),
        one_go: matches!(fact.and_then(|it| it.role), Some(Role::GlueUp | Role::Finish)),
        ..Step::blank(wanted.on, wanted.build, stage)
    };
    (fresh(), step)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, measure::Day, timing::estimates::estimate};

    fn list(construction: Construction, film: bool, learned: &[(Id, Option<Estimate>)]) -> Vec<(Id, Step)> {
        let it = fixture("person Ana 26\nbuild trays");
        let wanted = Wanted {
            construction,
            film,
            build: it.id("trays"),
            who: it.id("Ana"),
            on: On::Day(Day::parse("2026-03-01").unwrap()),
        };
        let mut next = 0_u8;
        let mut fresh = || {
            next += 1;
            Id::of([next; 16])
        };
        let called = |called: Called, stage: &str| match called {
            Called::Stage => stage.to_owned(),
            other => format!("{other:?}"),
        };
        steps(&it.shop(), wanted, learned, &called, &mut fresh)
    }

    #[test]
    fn every_list_is_one_line_of_steps_and_waits_after_what_dries() {
        for construction in Construction::ALL {
            let steps = list(construction, false, &[]);
            assert!(steps.len() >= 5, "{construction:?}");
            for (at, (_, step)) in steps.iter().enumerate() {
                let before = at.checked_sub(1).map(|at| &steps[at]);
                assert_eq!(step.after.first().map(|it| it.step), before.map(|(id, _)| *id));
                // What is done in one go dries, and nothing else does.
                let waits = step.after.first().and_then(|it| it.wait).is_some();
                assert_eq!(waits, before.is_some_and(|(_, it)| it.one_go), "{construction:?} {}", step.title);
                assert_eq!(step.usual, None);
            }
        }
    }

    #[test]
    fn the_last_edit_waits_for_the_finished_piece_and_for_the_first() {
        let steps = list(Construction::Panel, true, &[]);
        let titles: Vec<&str> = steps.iter().map(|(_, it)| it.title.as_str()).collect();
        assert_eq!(&titles[7..], ["edit", "ShootFinished", "EditLock"]);
        let after = |at: usize| steps[at].1.after.iter().map(|it| it.step).collect::<Vec<_>>();
        // Halfway through the piece there is something to cut.
        assert_eq!((after(7), after(8)), (vec![steps[3].0], vec![steps[6].0]));
        assert_eq!(after(9), [steps[8].0, steps[7].0]);
    }

    #[test]
    fn own_hours_are_filled_in_where_a_stage_stands_once() {
        let twice = [(standing_id(10), estimate(&[2.0], 3.0)), (standing_id(11), estimate(&[2.0], 3.0))];
        let steps = list(Construction::Panel, false, &twice);
        let usual: Vec<_> = steps.iter().filter_map(|(_, it)| Some((it.stage, it.usual?.plain()))).collect();
        assert_eq!(usual, [(standing_id(10), "6".to_owned())]);
    }
}
