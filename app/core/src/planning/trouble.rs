//! What is wrong with a plan, by the field that it stands in. Nothing here stops the rest from being planned.

use crate::{
    journal::Id,
    measure::{Instant, Seconds},
};

/// Each names the step or the build whose sheet mends it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// Steps wait for each other in a ring, each for the one before it and the first for the last. It is cut there: the
    /// first is planned as if it did not wait for the last.
    Circle {
        /// In their order.
        steps: Vec<Id>,
    },
    /// It waits for a step that is struck out, or of a build that is not planned: that wait is left out.
    AfterGone {
        /// Which waits.
        step: Id,
        /// For what.
        after: Id,
    },
    /// Nobody is named: it is left out.
    NobodyNamed {
        /// Which.
        step: Id,
    },
    /// Somebody is named who is struck out.
    PersonGone {
        /// Which.
        step: Id,
        /// Who.
        person: Id,
    },
    /// Nobody has said how long it takes: it is left out.
    NoEstimate {
        /// Which.
        step: Id,
    },
    /// Quick is longer than usual, or usual longer than slow: the three are taken in their order.
    OutOfOrder {
        /// Which.
        step: Id,
    },
    /// Somebody who must be at it has no free hours at all: it is left out.
    NoFreeHours {
        /// Which.
        step: Id,
        /// Who.
        person: Id,
    },
    /// All of them are needed, and there is no hour at which all are free: it is left out.
    NeverTogether {
        /// Which.
        step: Id,
    },
    /// It goes in one go, and when it is slow it is longer than the longest window: it is planned as long as that window.
    LongerThanAWindow {
        /// Which.
        step: Id,
        /// When it is slow, by each person.
        slow: Seconds,
        /// The longest window.
        longest: Seconds,
    },
    /// It needs something that is struck out: that need is left out.
    ResourceGone {
        /// Which.
        step: Id,
        /// What.
        resource: Id,
    },
    /// It needs more than there are: it is planned with all there are.
    TooFew {
        /// Which.
        step: Id,
        /// Of what.
        resource: Id,
        /// So many are needed.
        needs: u32,
        /// So many there are.
        there: u32,
    },
    /// It should begin at a moment that is past: it is planned from now on.
    StartPast {
        /// Which.
        step: Id,
        /// When.
        start: Instant,
    },
    /// It should be over by a moment that is past.
    EndPast {
        /// Which.
        step: Id,
        /// When.
        end: Instant,
    },
    /// A build should be over by a moment that is past.
    DatePast {
        /// Which build.
        build: Id,
        /// When.
        due: Instant,
    },
    /// The piece of a build is done only after the day on which it is due, whose film has a date of its own.
    PieceMissed {
        /// Which build.
        build: Id,
        /// When it should.
        should: Instant,
        /// When it is.
        is: Instant,
    },
    /// It can't begin when it should.
    StartMissed {
        /// Which.
        step: Id,
        /// When it should.
        should: Instant,
        /// When it can.
        can: Instant,
    },
    /// It is not over when it should be.
    EndMissed {
        /// Which.
        step: Id,
        /// When it should.
        should: Instant,
        /// When it is.
        is: Instant,
    },
    /// There is no room for it as far ahead as windows are laid out.
    NoRoom {
        /// Which.
        step: Id,
    },
}
