//! The shop: people and their rates, what is set once, the look of this phone, where the journal lies, and the
//! way to what was done for the shop as a whole.

mod backup;
mod bearing;
mod bring_in;
mod choices;
mod free;
mod kept;
mod look;
mod people;
mod person;
mod resources;
mod running;
mod set;

pub use backup::{At as SavingAt, Photos, Saving, save as save_backup};
pub use bring_in::{BringInSheet, Bringing};
pub use choices::{ChoicesSheet, write as write_setting};
pub use free::{comes_to, typed_windows, windows_text};
pub use set::{to_the_wrong, week_start};

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        key::{Key, KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{
        cautions,
        trouble::{TroubleKeys, Troubles},
    },
    shell::{Desk, Place, frame::Places},
    words::{away, exchange, files, journal, shop as words},
};
use benchslate_core::journal::kinds::SettingKey;

/// Read above; below it the shop's own journal and the two keys of the backup.
#[component]
pub fn ShopSheet() -> impl IntoView {
    let desk = Desk::here();
    let title = Signal::derive(move || {
        let named = desk.read(|view| view.shop.settings.latest(SettingKey::ShopName).map(str::to_owned));
        named.unwrap_or_else(|| words::the_shop().to_owned())
    });
    let note = Signal::derive(move || {
        Some(desk.read(|view| words::counted_where(view.tongue.currency(), &view.shop.zone.name)))
    });
    view! {
        <Sheet>
            <Head title=title note=note/>
            <Above>
                <Troubles/>
                <Read name=title below=words::below().to_owned()>
                    {crate::screens::sample::row()}
                    <people::People/>
                    <running::Running/>
                    <resources::Resources/>
                    <set::SetOnce/>
                    <look::Look/>
                    <kept::KeptHere/>
                    {to_files()}
                    {move || put_away(desk)}
                    {cautions::way_to_all()}
                    {crate::screens::sample::way_in()}
                </Read>
            </Above>
            <Below>
                <BackupHand/>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

/// Somebody, or their free hours.
pub fn of_person(place: &Place) -> AnyView {
    match place {
        Place::Free(person) => view! { <free::FreeSheet person=*person/> },
        Place::Person(of) => view! { <person::PersonSheet of=*of/> },
        _ => ().draw(),
    }
}

/// The way to tables for a spreadsheet.
fn to_files() -> AnyView {
    let (label, end) = (files::title().to_owned(), files::what_kind().to_owned());
    view! { <RowLink label end leads=Leads::To(Place::Files(None).href())/> }
}

/// The way to what is not offered any more.
fn put_away(desk: Desk) -> AnyView {
    let things = desk.read(|view| view.shop.retired.len());
    let end = away::so_many(things);
    view! { <RowLink label=away::put_away().to_owned() end leads=Leads::To(Place::PutAway.href())/> }
}

/// Only on this phone: when it was last elsewhere, and the keys.
#[component]
fn BackupHand() -> impl IntoView {
    let (desk, saving) = (Desk::here(), expect_context::<Saving>());
    let at = saving.at;
    let last = Memo::new(move |_| {
        at.track();
        backup::last()
    });
    // Said once, though the photos are counted under the key.
    let said = Memo::new(move |_| match at.get() {
        SavingAt::Rest => exchange::only_here(last.get().map(|last| backup::day(desk, last)).as_deref()),
        SavingAt::UnderWay { .. } => exchange::being_saved().to_owned(),
        SavingAt::Without { left } => desk.read(|view| exchange::left_out(view.tongue, left)),
        SavingAt::TooLong => exchange::backup_too_long().to_owned(),
        SavingAt::Refused => exchange::not_saved().to_owned(),
    });
    let bad = move || !matches!(at.get(), SavingAt::Rest | SavingAt::UnderWay { .. });
    let label = Signal::derive(move || {
        let label = match at.get() {
            SavingAt::Rest | SavingAt::Refused | SavingAt::Without { .. } => exchange::back_up_now(),
            SavingAt::UnderWay { .. } => exchange::stop(),
            SavingAt::TooLong => exchange::without_photos(),
        };
        label.to_owned()
    });
    let note = Signal::derive(move || {
        if let SavingAt::UnderWay { done, all } = at.get() {
            return Some(desk.read(|view| exchange::so_far(view.tongue, done, all)));
        }
        let last = last.get();
        let before = last.map_or(0, |last| last.lines);
        Some(desk.read(|view| {
            exchange::since_then(view.tongue, view.journal.len().saturating_sub(before), last.is_some())
        }))
    });
    let save = move |()| match at.get_untracked() {
        SavingAt::UnderWay { .. } => saving.stop(),
        SavingAt::TooLong => backup::save(desk, saving, Photos::None),
        SavingAt::Rest | SavingAt::Refused | SavingAt::Without { .. } => {
            backup::save(desk, saving, Photos::All);
        }
    };
    view! {
        <Hand name=words::keys().to_owned()>
            <p class="only-here" class:red=bad role="status">{move || said.get()}</p>
            <TroubleKeys backs_up=true/>
            <Keys class="mid">
                <KeyLink label=journal::the_journal().to_owned() href=Place::ShopJournal.href()/>
                <KeyLink
                    label=exchange::bring_in().to_owned()
                    note=exchange::a_file().to_owned()
                    href=Place::BringIn.href()
                />
                <Key
                    class="wide"
                    label
                    note
                    kind=KeyKind::Filled
                    on_tap=Callback::new(save)
                />
            </Keys>
        </Hand>
    }
}
