//! All that is put away, each taken back in one tap; and the stages that can be, for they have no sheet of their own.

use super::put;
use crate::dom::prelude::*;
use crate::{
    parts::{
        kept_row::{KeptRow, KeptText},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Group, Leads},
    },
    screens::{form_keys::leave_key, trouble::Troubles},
    shell::{Desk, Go, Place, Tab, desk::View, frame::Places, mark::LastMarkHere},
    words::{away as words, common},
};
use benchslate_core::{journal::Id, measure::InOrder};

/// A thing of the list.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Row {
    id: Id,
    name: String,
    note: Option<String>,
    href: Option<String>,
    away: bool,
}

/// Rows under one heading.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Rows {
    title: &'static str,
    rows: Vec<Row>,
}

/// The sheet.
#[component]
pub fn AwaySheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let groups = Memo::new(move |_| desk.read(groups));
    let none = move || !groups.read().iter().any(|group| group.rows.iter().any(|row| row.away));
    let group = move |Rows { title, rows }: Rows| {
        let rows: Vec<AnyView> = rows.into_iter().map(|row| drawn(desk, row)).collect();
        view! { <Group title=title.to_owned()/>{rows} }
    };
    view! {
        <Sheet>
            <Head title=words::put_away().to_owned() note=words::not_offered().to_owned() tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::put_away().to_owned() below=words::below().to_owned()>
                    {move || none().then(|| view! { <p class="lead">{words::nothing()}</p> })}
                    {each(move || groups.get(), group)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{leave_key(go)}</Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

fn drawn(desk: Desk, row: Row) -> AnyView {
    let Row { id, name, note, href, away } = row;
    let (key, key_name) = if away {
        (words::take_back(), words::take_back_name(&name))
    } else {
        (words::put_away(), words::put_away_name(&name))
    };
    let leads = href.map_or(Leads::Nowhere, Leads::To);
    let text = KeptText { label: name, note, key: key.to_owned(), key_name };
    view! { <KeptRow text leads on_tap=Callback::new(move |()| put(desk, id, away))/> }
}

fn groups(view: &View) -> Vec<Rows> {
    let shop = view.shop;
    let away = |id: &Id| !shop.offers(*id);
    let row = |id: Id, name: &str, href: Option<Place>| Row {
        id,
        name: name.to_owned(),
        note: None,
        href: href.map(|place| place.href()),
        away: away(&id),
    };
    let builds = shop.builds.iter().filter(|(id, _)| away(id)).map(|(id, build)| Row {
        note: Some(view.tongue.day_year(build.order.day)),
        ..row(*id, &build.title, Some(Place::Build(*id, Tab::Journal)))
    });
    let items = shop.items.iter().filter(|(id, _)| away(id));
    let items = items.map(|(id, item)| row(*id, &item.name, Some(Place::Lot(*id))));
    let lots = shop.lots.iter().filter(|(id, _)| away(id));
    let lots = lots.map(|(id, lot)| row(*id, &lot.name, Some(Place::Lot(*id))));
    let finds = shop.finds.iter().filter(|(id, _)| away(id));
    let finds = finds.map(|(id, find)| row(*id, &find.name, Some(Place::Find(*id))));
    let people = shop.people.iter().filter(|(id, _)| away(id));
    let people = people.map(|(id, person)| row(*id, &person.name, Some(Place::Person(Some(*id)))));
    let resources = shop.resources.iter().filter(|(id, _)| away(id));
    let resources = resources.map(|(id, it)| row(*id, &it.name, Some(Place::Entry(*id))));
    let mut stages: Vec<_> = shop.stages.iter().collect();
    stages.order_by(|a, b| (a.1.place, &a.1.name).cmp(&(b.1.place, &b.1.name)));
    let stage = |it: &(&Id, &benchslate_core::journal::shop::Stage)| Row {
        note: Some(common::side(it.1.side).to_owned()),
        ..row(*it.0, &it.1.name, None)
    };
    let (put_away, offered): (Vec<Row>, Vec<Row>) = stages.iter().map(stage).partition(|row| row.away);
    let mut groups = vec![
        Rows { title: words::builds(), rows: builds.rev().collect() },
        Rows { title: words::stock(), rows: items.chain(lots).chain(finds).collect() },
        Rows { title: words::people(), rows: people.collect() },
        Rows { title: crate::words::free::resources(), rows: resources.collect() },
        Rows { title: words::stages(), rows: put_away },
        Rows { title: words::stages_offered(), rows: offered },
    ];
    groups.retain(|group| !group.rows.is_empty());
    groups
}
