//! The journal of a build, a lot or the shop: newest first, by day; the newest 60 lines, and 60 more at a tap; find as you type.

use super::{
    facts,
    line::{self, Line},
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::{Field, Typing},
        journal_line::{DayHead, JournalLine, LineText, Lines, Standing},
        key::Key,
        sheet::{Above, Below, Hand, HandKind, Head, Keys, Read, Sheet},
        sum_row::Leads,
    },
    screens::{About, parts_list, photos, trouble::Troubles},
    shell::{
        Desk, Go, Place, Tab,
        desk::{Mark, Marked, Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{cost, earned, journal as words},
};
use benchslate_core::{
    costing::Amounts,
    journal::{
        Change, Id,
        find::Wanted,
        kinds::{Bearer, SettingKey, State},
        listing::{self, Listed},
    },
    measure::Day,
};

/// How many lines are shown at first, and how many more at a tap.
const STEP: usize = 60;

/// A day as it is drawn.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct DrawnDay {
    day: String,
    sum: Option<String>,
    lines: Vec<Line>,
}

/// What is drawn of the listing.
#[derive(Clone, Debug, Default, PartialEq)]
struct Drawn {
    days: Vec<DrawnDay>,
    /// Lines that are there and not drawn.
    more: usize,
    /// Lines that hold what was asked for.
    found: usize,
}

/// The sheet.
#[component]
pub fn JournalSheet(of: Bearer) -> impl IntoView {
    let desk = Desk::here();
    let typed = RwSignal::new(String::new());
    let most = RwSignal::new(STEP);
    let drawn = drawn_of(desk, of, typed, most);
    // Until the journal is read there may well be such a build or lot.
    let ready = Memo::new(move |_| desk.phase.get() == Phase::Ready);
    let title = Memo::new(move |_| desk.read(|view| title(view, of)));
    let lost = Memo::new(move |_| ready.get() && title.read().is_none());
    let head = Signal::derive(move || match title.get() {
        Some(title) => words::journal_of(&title),
        None if ready.get() => nothing(of).to_owned(),
        None => words::journal_of(""),
    });
    let (cell, of_build) = stands(of);
    let (go, of_entry) = (expect_context::<Go>(), entry_of(of));
    let below = Memo::new(move |_| drawn.with(|drawn| drawn.days.last().map(|day| words::down_to(&day.day))));
    view! {
        <Sheet>
            {move || match of_entry.filter(|_| !lost.get()) {
                // The title leads to what it is about: its name, its due day, whether it is put away.
                Some(entry) => {
                    let tap = Callback::new(move |()| go.to(&Place::Entry(entry)));
                    view! { <Head title=head note=Signal::derive(move || Some(stands_now(desk, of))) tight=true on_tap=tap/> }
                }
                None => view! { <Head title=head note=Signal::derive(move || Some(stands_now(desk, of))) tight=true/> },
            }}
            <Above>
                <Troubles/>
                <Read name=head below=below>
                    {move || lost.get().then(|| view! { <p class="lead">{cost::no_build_why()}</p> })}
                    {parts_list::way_here(desk, Signal::derive(move || of_build.get().map(|(build, _)| build)))}
                    {days(desk, drawn)}
                    {move || rest(drawn, typed, most)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned() kind=HandKind::Dense>
                    <Field
                        id="find"
                        class="found"
                        label=words::find().to_owned()
                        hint=words::find_hint().to_owned()
                        typing=Typing::Search
                        value=typed
                        on_input=Callback::new(move |text| {
                            most.set(STEP);
                            typed.set(text);
                        })
                    />
                    <NewLines of/>
                </Hand>
                <Places cell of_build=of_build/>
            </Below>
        </Sheet>
    }
}

/// What it is of, by name. None: struck out, or never here.
fn title(view: &View, of: Bearer) -> Option<String> {
    let here = match of {
        Bearer::Build(id) => view.shop.builds.contains_key(&id),
        Bearer::Lot(id) => view.shop.lots.contains_key(&id),
        Bearer::Shop => {
            let named = view.shop.settings.latest(SettingKey::ShopName);
            return Some(named.unwrap_or(words::of_the_shop()).to_owned());
        }
    };
    here.then(|| facts::bearer(view, of))
}

/// The entry that it is the journal of.
fn entry_of(of: Bearer) -> Option<Id> {
    match of {
        Bearer::Build(id) | Bearer::Lot(id) => Some(id),
        Bearer::Shop => None,
    }
}

/// Beside the title: closed since a day, else how the lines stand.
fn stands_now(desk: Desk, of: Bearer) -> String {
    let now = desk.minute();
    let closed = desk.read(|view| {
        let Bearer::Build(build) = of else { return None };
        let day = view.shop.closed_on(build, view.shop.zone.day(now))?;
        Some(earned::stands(State::Closed, Some(&view.tongue.day(day))))
    });
    closed.unwrap_or_else(|| words::newest_first().to_owned())
}

fn nothing(of: Bearer) -> &'static str {
    match of {
        Bearer::Build(_) | Bearer::Shop => cost::no_build(),
        Bearer::Lot(_) => words::no_lot(),
    }
}

/// A build, and which of its sheets.
type OwnSheet = (Id, Option<Tab>);

/// Where it stands in the title block: a build's among the build's own sheets, a lot's by the shelf, the shop's
/// by the shop.
fn stands(of: Bearer) -> (usize, Signal<Option<OwnSheet>>) {
    let (cell, of_build) = match of {
        Bearer::Build(id) => (1, Some((id, Some(Tab::Journal)))),
        Bearer::Lot(_) => (2, None),
        Bearer::Shop => (4, None),
    };
    (cell, Signal::stored(of_build))
}

/// Hours, stock, money, note: for what this is the journal of.
#[component]
fn NewLines(of: Bearer) -> impl IntoView {
    let go: Go = expect_context();
    let About(about) = expect_context();
    let key = |(label, place): (&'static str, Place)| {
        let tap = move |()| {
            about.set(Some(of));
            go.to(&place);
        };
        view! { <Key label=label.to_owned() on_tap=Callback::new(tap)/> }
    };
    let places = [Place::Hours, Place::Use(None), Place::Expense, Place::Note];
    let keys: Vec<AnyView> = words::new_lines().into_iter().zip(places).map(key).collect();
    view! { <Keys class="journal-kinds" lead=words::write_down().to_owned()>{keys}</Keys> }
}

fn drawn_of(desk: Desk, about: Bearer, typed: RwSignal<String>, most: RwSignal<usize>) -> Memo<Drawn> {
    // Made once a change of the journal; the texts only once something is looked for.
    let texts = StoredValue::new_local(None::<Vec<String>>);
    let turn = StoredValue::new(0_u64);
    let listed = Memo::new(move |_| {
        texts.set_value(None);
        turn.update_value(|turn| *turn = turn.wrapping_add(1));
        let lines = desk.read(|view| listing::listing(view.journal, view.shop, about));
        (turn.get_value(), lines)
    });
    let amounts = Memo::new(move |_| desk.books(|books, _| books.amounts(about)));
    Memo::new(move |_| {
        let wanted = Wanted::read(&typed.read());
        let (listed, amounts) = (listed.read(), amounts.read());
        let today = desk.minute();
        desk.read(|view| {
            let lines = &listed.1;
            let today = view.shop.zone.day(today);
            if wanted.is_empty() {
                return draw(view, &amounts, lines, lines, most.get(), today);
            }
            texts.update_value(|texts| {
                texts.get_or_insert_with(|| all_texts(view, &amounts, lines));
            });
            let held: Vec<Listed> = texts.with_value(|texts| {
                let of = lines.iter().zip(texts.iter().flatten());
                of.filter(|(_, text)| wanted.finds(text)).map(|(at, _)| *at).collect()
            });
            draw(view, &amounts, lines, &held, most.get(), today)
        })
    })
}

/// The words by which each line is found. A day's name is asked of the browser once.
fn all_texts(view: &View, amounts: &Amounts, lines: &[Listed]) -> Vec<String> {
    let mut texts = Vec::with_capacity(lines.len());
    for (day, of_day) in listing::days(lines) {
        let day = view.tongue.day(day);
        texts.extend(of_day.iter().map(|at| line::found_by(view, amounts, *at, &day)));
    }
    texts
}

fn draw(view: &View, amounts: &Amounts, all: &[Listed], held: &[Listed], most: usize, today: Day) -> Drawn {
    let shown = held.get(..most).unwrap_or(held);
    let days = listing::days(shown)
        .map(|(day, lines)| {
            // A day's sum is that of the whole day, also where some of its lines aren't shown.
            let whole = all.iter().filter(|at| at.day == day).map(|at| at.entry);
            DrawnDay {
                day: if day.year() == today.year() {
                    view.tongue.day(day)
                } else {
                    view.tongue.day_year(day)
                },
                sum: words::day_sum(view.tongue, &amounts.sum(whole)),
                lines: lines.iter().map(|at| line::line(view, amounts, *at, today)).collect(),
            }
        })
        .collect();
    Drawn { days, more: held.len().saturating_sub(shown.len()), found: held.len() }
}

fn days(desk: Desk, drawn: Memo<Drawn>) -> AnyView {
    let day = move |day: DrawnDay| {
        let lines: Vec<AnyView> = day.lines.into_iter().map(|it| drawn_line(desk, it)).collect();
        view! {
            <DayHead day=day.day sum=day.sum/>
            <Lines name=words::lines().to_owned()>{lines}</Lines>
        }
    };
    each(move || drawn.get().days, day)
}

fn drawn_line(desk: Desk, it: Line) -> AnyView {
    let Line { entry, time, kind, what, second, amount, version, struck, picture } = it;
    let standing = match entry {
        Some(entry) if struck => Standing::Struck {
            put_back: words::put_back().to_owned(),
            on_put_back: Callback::new(move |()| bring_back(desk, entry)),
        },
        _ if version > 1 => {
            Standing::Corrected { version: version.to_string(), name: words::version_name(version) }
        }
        _ => Standing::AsWritten,
    };
    let leads = entry.map_or(Leads::Nowhere, |entry| Leads::To(Place::Entry(entry).href()));
    let picture = picture.map(photos::thumb);
    view! { <JournalLine text=LineText { time, kind, what, second, amount } standing leads picture/> }
}

/// Brings a struck entry back as it was.
pub fn bring_back(desk: Desk, entry: Id) {
    let (kind, what) = desk
        .now_read(|view| (line::kind(view, entry), crate::words::notes::beginning(&line::what(view, entry))));
    desk.act(
        move |hand| Change::bring_back(hand.journal, entry).into_iter().collect(),
        move |_| {
            let second = Some(words::mark_back().to_owned());
            Marked::from(Mark { kind: kind.clone(), what: what.clone(), second })
        },
    );
}

/// What isn't drawn: earlier lines, or that nothing was found.
fn rest(drawn: Memo<Drawn>, typed: RwSignal<String>, most: RwSignal<usize>) -> AnyView {
    let (more, found) = drawn.with(|drawn| (drawn.more, drawn.found));
    let looked_for = typed.with(|typed| !typed.trim().is_empty());
    if found == 0 && looked_for {
        let text = words::nothing_found(typed.read().trim());
        return view! { <p class="lead" role="status">{text}</p> };
    }
    if more == 0 {
        return ().draw();
    }
    let tap = Leads::Tap(Callback::new(move |()| most.update(|most| *most = most.saturating_add(STEP))));
    view! { <RowLink label=words::earlier() end=words::lines_more(more) leads=tap/> }
}
