//! The parts list of a build: what is wanted, what is cut, a tap a piece.

mod cuts;
mod movement;

pub use cuts::CutsSheet;
pub use movement::MovementSheet;

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        kept_row::{KeptRow, KeptText},
        key::{KeyKind, KeyLink},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumTotal},
    },
    screens::journal::part_size,
    shell::{
        Desk, Place,
        desk::{Mark, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::parts as words,
};
use benchslate_core::journal::{Body, Change, Id, Kind, kinds, shop::Part};

/// The sheet.
#[component]
pub fn PartsSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let look = Memo::new(move |_| desk.read(|view| look(view, of)));
    let title = Signal::derive(move || look.read().as_ref().map(|it| it.title.clone()).unwrap_or_default());
    let rows = move || {
        let look = look.read();
        look.as_ref().map(|it| drawn(desk, it))
    };
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above><Read name=title below=words::below().to_owned()>{rows}</Read></Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="go">
                        <KeyLink
                            label=words::boards().to_owned()
                            note=words::which_to_cut().to_owned()
                            href=Place::Cuts(of).href()
                        />
                        <KeyLink
                            label=words::new_part().to_owned()
                            note=words::how_many_how_long().to_owned()
                            kind=KeyKind::Filled
                            href=Place::Add(Kind::Part, Some(of)).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

#[derive(Clone, Debug, PartialEq)]
struct Look {
    title: String,
    open: Vec<Row>,
    cut: Vec<Row>,
    to_cut: String,
}

#[derive(Clone, Debug, PartialEq)]
struct Row {
    part: Id,
    name: String,
    note: String,
}

fn look(view: &View, build: Id) -> Option<Look> {
    let title = words::title(&view.shop.builds.get(&build)?.title);
    let row = |(part, it): &(Id, &Part)| Row {
        part: *part,
        name: it.body.name.clone(),
        note: words::cut_of(&part_size(view, &it.body), it.body.cut, it.body.count),
    };
    let (open, cut): (Vec<_>, Vec<_>) =
        view.shop.parts_of(build).into_iter().partition(|(_, it)| it.to_cut() > 0);
    let to_cut = view.shop.pieces_of(build).0.to_string();
    Some(Look { title, open: open.iter().map(row).collect(), cut: cut.iter().map(row).collect(), to_cut })
}

fn drawn(desk: Desk, look: &Look) -> AnyView {
    let row = move |row: &Row, cut: bool| {
        let (part, key) = (row.part, if cut { words::one_less() } else { words::cut_one() });
        let text = KeptText {
            label: row.name.clone(),
            note: Some(row.note.clone()),
            key: key.to_owned(),
            key_name: words::key_name(key, &row.name),
        };
        let tap = Callback::new(move |()| tick(desk, part, !cut));
        view! { <KeptRow text leads=Leads::To(Place::Entry(part).href()) on_tap=tap/> }
    };
    let none = look.open.is_empty() && look.cut.is_empty();
    let lead = none.then(|| view! { <p class="lead">{words::nothing_yet()}</p> });
    let open: Vec<AnyView> = look.open.iter().map(|it| row(it, false)).collect();
    let total = (!look.open.is_empty())
        .then(|| view! { <SumTotal label=words::still_to_cut().to_owned() figure=look.to_cut.clone()/> });
    let cut: Vec<AnyView> = look.cut.iter().map(|it| row(it, true)).collect();
    let group = (!cut.is_empty()).then(|| view! { <Group title=words::all_cut().to_owned()/> });
    view! { {lead}{open}{total}{group}{cut} }
}

/// One more is cut, or one less.
fn tick(desk: Desk, part: Id, more: bool) {
    desk.act(
        move |hand| {
            let Some(Body::Part(it)) = hand.journal.body(part) else { return Vec::new() };
            let cut = if more { it.cut.saturating_add(1).min(it.count) } else { it.cut.saturating_sub(1) };
            vec![Change::write(part, kinds::Part { cut, ..it.clone() })]
        },
        move |after| {
            let it = after.shop.parts.get(&part).map(|it| &it.body);
            let what = it.map(|it| words::marked_cut(&it.name, it.cut, it.count)).unwrap_or_default();
            let second = it.and_then(|it| after.shop.builds.get(&it.build)).map(|it| it.title.clone());
            Mark { kind: words::kind().to_owned(), what, second }.into()
        },
    );
}

/// To the parts list of a build, where it has one: how much of it is cut.
pub fn way_here(desk: Desk, build: Signal<Option<Id>>) -> AnyView {
    let said = Memo::new(move |_| {
        let build = build.get()?;
        let (left, all) = desk.read(|view| view.shop.pieces_of(build));
        (all > 0).then(|| (build, words::so_far(all.saturating_sub(left), all)))
    });
    let row = move || {
        said.get().map(|(build, end)| {
            let leads = Leads::To(Place::Parts(build).href());
            view! { <RowLink label=words::parts_list().to_owned() end leads/> }
        })
    };
    view! { {row} }
}
