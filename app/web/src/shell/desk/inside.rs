//! What lies on the desk: lines, their fold, the books, and the store they are kept in.

use super::{
    act::{Act, Job},
    record::LastMark,
};
use crate::{
    platform::clock,
    store::{Piece, Row, Store},
    words::Tongue,
};
use benchslate_core::{
    costing::Books,
    journal::{
        Id, Journal, Shop,
        kinds::{Bearer, SettingKey},
    },
    measure::{Instant, Zone},
    timing::{
        bench::{self, Bench},
        clocks,
    },
};
use std::{
    cell::{Cell, RefCell},
    collections::VecDeque,
};

/// What a screen may look at.
pub struct View<'a> {
    /// All lines.
    pub journal: &'a Journal,
    /// Their fold.
    pub shop: &'a Shop,
    /// How figures and days are written for this reader.
    pub tongue: &'a Tongue,
}

pub(super) struct Inside {
    pub store: Option<Store>,
    pub device: Id,
    /// Rows up to here are in the journal.
    pub seq: u64,
    pub journal: Journal,
    pub shop: Shop,
    pub tongue: Tongue,
    /// The journal is read; acts may begin.
    pub open: bool,
    pub busy: bool,
    pub queue: VecDeque<Job>,
    /// An act that could not be kept, for another try.
    pub held: Option<Act>,
    /// An act that would put something on a closed build, until that is answered.
    pub asked: Option<Act>,
    /// The mark that stood before it.
    pub last_kept: Option<LastMark>,
    /// The books that were made last, and after which change.
    pub(super) books: RefCell<Option<(u64, Books)>>,
    /// Goes up whenever the fold is another.
    pub change: u64,
    /// Something on view is to follow the books at leisure.
    pub wanted: Cell<bool>,
    /// They are being made.
    pub making: Cell<bool>,
}

impl Inside {
    pub fn new(language: String) -> Inside {
        Inside {
            store: None,
            device: Id::of([0; 16]),
            seq: 0,
            journal: Journal::default(),
            shop: Shop::default(),
            tongue: Tongue::new(language),
            open: false,
            busy: false,
            queue: VecDeque::new(),
            held: None,
            asked: None,
            last_kept: None,
            books: RefCell::new(None),
            change: 0,
            wanted: Cell::new(false),
            making: Cell::new(false),
        }
    }

    pub fn view(&self) -> View<'_> {
        View { journal: &self.journal, shop: &self.shop, tongue: &self.tongue }
    }

    pub fn books<T>(&self, as_of: Instant, look: impl FnOnce(&Books, &View) -> T) -> T {
        let mut kept = self.books.borrow_mut();
        let (_, books) = match kept.take().filter(|made| self.is_true(made, as_of)) {
            Some(made) => kept.insert(made),
            None => kept.insert((self.change, Books::close(&self.shop, as_of))),
        };
        look(books, &self.view())
    }

    /// Books of this fold and this moment.
    pub(super) fn is_true(&self, (change, books): &(u64, Books), as_of: Instant) -> bool {
        *change == self.change && books.as_of == as_of
    }

    /// What every clock shows at a moment, hours and minutes.
    pub fn clocks_read(&self, at: Instant) -> Vec<(i64, i64)> {
        clocks(&self.shop, at).iter().map(|clock| clock.so_far.hours_minutes()).collect()
    }

    pub fn bench(&self, now: Instant, wish: Option<Bearer>, whose: Option<Id>) -> Bench {
        bench::look(&self.shop, now, wish, whose)
    }

    /// Folds anew; the first time by the zone that the phone is in, as a shop mostly is.
    pub fn fold(&mut self) {
        if self.shop.zone.name.is_empty() {
            self.shop.zone = zone(&clock::zone_name());
        }
        self.shop = Shop::fold(&self.journal, &self.shop.zone);
        self.settle();
    }

    /// After a fold: the zone's table is made again, and the fold with it, only where the zone has changed.
    pub fn settle(&mut self) {
        let name = self.shop.settings.latest(SettingKey::Zone).map(str::to_owned);
        let name = name.unwrap_or_else(clock::zone_name);
        if name != self.shop.zone.name {
            self.shop = Shop::fold(&self.journal, &zone(&name));
        }
        self.tongue.follow(&self.shop);
        self.change = self.change.wrapping_add(1);
    }

    /// Rows that another window wrote.
    pub fn take_in(&mut self, rows: &[Row]) {
        for row in rows {
            // A line whose envelope can't be read stays where it is; the self-check names damage.
            let _ = self.journal.add(&row.line);
            self.seq = self.seq.max(row.seq);
        }
    }

    /// Lines from the disk. One that can't be read is left on the disk and left out here.
    pub fn take_in_piece(&mut self, piece: Piece) {
        for line in piece.lines {
            let _ = self.journal.take(line.into());
        }
        self.seq = self.seq.max(piece.up_to);
    }
}

/// The zone's table of offset changes, asked of the browser; UTC where it doesn't know the name.
fn zone(name: &str) -> Zone {
    let Some(changes) = clock::offset_changes(name) else { return Zone::utc() };
    Zone { name: name.to_owned(), changes }
}
