//! A find is taken home: it becomes a lot, and the drive that fetches it goes with it, in one act.

use crate::{
    screens::first_amount,
    shell::{Desk, desk::Mark},
    words::finds as words,
};
use benchslate_core::journal::{Change, Id, On, kinds::Find};

/// What is taken, and the ids of its lot and drive.
#[derive(Clone)]
pub struct Taken {
    pub entry: Id,
    pub find: Find,
    /// Money is in it.
    pub money: bool,
    pub ids: [Id; 2],
}

/// Writes all of it; `then` gets the lot.
pub fn take(desk: Desk, taken: Taken, then: impl Fn(Id) + Send + Sync + 'static) {
    let [lot, drive] = taken.ids;
    let name = taken.find.name.clone();
    desk.act_then(
        move |hand| {
            let Taken { entry, find, money, .. } = &taken;
            let on = On::At(hand.shop.zone.when(hand.now));
            let mut changes = if *money { first_amount::settings(hand) } else { Vec::new() };
            changes.push(Change::write(*entry, Find { lot: Some(lot), ..find.clone() }));
            changes.push(Change::write(lot, find.taken(on)));
            changes.extend(find.drive(on, lot).map(|trip| Change::write(drive, trip)));
            changes
        },
        move |_| Mark { kind: words::taken_home().to_owned(), what: name.clone(), second: None }.into(),
        move |done| {
            if done.is_ok() {
                then(lot);
            }
        },
    );
}
