//! A figure opened: its levels as bars, its terms as a sum, down to the lines of the journal.

use super::{
    figures::{self, At, Remarks, Row},
    missing,
    say::Say,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        growth::{Growth, Level as Bar},
        key::KeyLink,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Leads, SumTotal, Sums},
    },
    shell::{
        Desk, Go, Place, Tab,
        desk::{Phase, View},
        frame::Places,
    },
    words::{cost as words, gaps},
};
use benchslate_core::{
    costing::{
        Books, Part, PartOf, Path, Rule, Statement,
        present::{self, Level},
        salvage::{Across, By},
    },
    journal::{Id, kinds::Source},
    measure::Money,
};

/// Levels on the sheet at once; one more lets the first slide off.
const LEVELS: usize = 3;

/// A figure of a build, or of a lot, opened.
#[component]
pub fn OpenedSheet(of: Id, path: String) -> impl IntoView {
    let desk = Desk::here();
    let path = Path::parse(&path);
    let opened = Memo::new(move |_| desk.books(|books, view| look(books, view, of, &path)));
    // Not known before the journal is read.
    let is_build = Memo::new(move |_| desk.read(|view| !view.shop.lots.contains_key(&of)));
    let all = move || match opened.get() {
        _ if desk.phase.get() != Phase::Ready => ().draw(),
        None => missing::no_figure(),
        Some(opened) => whole(opened),
    };
    let keys = Memo::new(move |_| match opened.read().as_ref() {
        Some(opened) => Some((opened.fold.clone(), opened.next.clone())),
        // An address that opens nothing leads back to its sheet.
        None => (desk.phase.get() == Phase::Ready).then(|| (way_back(of, is_build.get()), None)),
    });
    let name = Signal::derive(move || {
        opened.read().as_ref().map_or_else(|| words::true_cost().to_owned(), |it| it.title.clone())
    });
    let note = Signal::derive(move || opened.read().as_ref().map(|it| it.note.clone()));
    let below = Signal::derive(move || opened.read().as_ref().map(|it| words::more_lines(&it.within)));
    let places = move || {
        let tab = is_build.get().then_some((of, Some(Tab::Cost)));
        let cell = if is_build.get() { 1 } else { 2 };
        view! { <Places cell of_build=Signal::stored(tab)/> }
    };
    view! {
        <Sheet>
            <Head title=name note=note tight=true/>
            <Above><Read name=name below=below>{all}</Read></Above>
            <Below>
                {move || keys.get().map(|(fold, next)| hand(fold, next))}
                {places}
            </Below>
        </Sheet>
    }
}

fn way_back(of: Id, is_build: bool) -> Way {
    let (to, place) = if is_build {
        (words::to_the_cost(), Place::Build(of, Tab::Cost))
    } else {
        (words::to_the_lot(), Place::Lot(of))
    };
    (to.to_owned(), place.href())
}

/// A key: the line under it, and where it leads.
type Way = (String, String);

#[derive(Clone, Debug, PartialEq)]
struct Opened {
    title: String,
    note: String,
    name: String,
    /// The same within a sentence.
    within: String,
    figure: String,
    bars: Vec<Bar>,
    /// Where each bar's label folds back to.
    folds: Vec<Place>,
    /// Where each piece of each bar opens.
    pieces: Vec<Vec<Option<Place>>>,
    how: Option<&'static str>,
    rows: Vec<Row>,
    /// The draw that is opened, as an entry.
    entry: Option<String>,
    remarks: Remarks,
    fold: Way,
    next: Option<Way>,
}

fn look(books: &Books, view: &View, of: Id, path: &Path) -> Option<Opened> {
    let (say, minor) = (Say { books, view }, view.tongue.minor());
    let (cost, lot) = (books.build_cost(of), books.lot(of));
    let build = view.shop.builds.get(&of);
    let across = if is_across(path) { By::ALL.map(|by| books.across(by)) } else { [None, None] };
    let roots: Vec<&Statement> = match (build, &lot) {
        _ if is_across(path) => across.iter().flatten().flat_map(Across::roots).collect(),
        (Some(_), _) => cost.roots(),
        (None, Some(lot)) => lot.roots().to_vec(),
        (None, None) => return None,
    };
    let open = |path: &Path| roots.iter().find_map(|root| present::open(root, path, minor));
    let draw: Statement;
    let levels = match open(path) {
        Some(levels) => levels,
        None => {
            let mut levels = open(&path.up()?)?;
            let (entry, shown) = drawn(levels.last()?, path)?;
            draw = books.draw(entry)?;
            levels.push(under(&draw, shown?));
            levels
        }
    };
    if is_across(path) {
        return Some(sheet(say, of, path, &levels, crate::words::across::all_salvage()));
    }
    let of_title = build.map_or_else(|| gaps::name(view.shop, Source::Lot(of)), |build| build.title.clone());
    Some(sheet(say, of, path, &levels, &of_title))
}

/// A figure over many lots: its address begins with that.
fn is_across(path: &Path) -> bool {
    path.to_string().starts_with("across-")
}

/// The draw that the last step of an address names.
fn drawn(level: &Level, path: &Path) -> Option<(Id, Option<benchslate_core::measure::Shown>)> {
    let step = path.steps.last()?;
    level.statement.parts.iter().zip(&level.parts).find_map(|(part, shown)| match part.of {
        PartOf::Entry { entry, .. } if Rule::Draw { entry }.step() == *step => Some((entry, *shown)),
        PartOf::Entry { .. } | PartOf::Statement(_) => None,
    })
}

/// A draw opened keeps the value that was tapped.
fn under(draw: &Statement, shown: benchslate_core::measure::Shown) -> Level<'_> {
    let exact: Vec<Money> = draw.parts.iter().map(|part| part.signed_money().unwrap_or_default()).collect();
    Level { statement: draw, shown: Some(shown), parts: shown.parts(&exact).into_iter().map(Some).collect() }
}

fn sheet(say: Say, of: Id, path: &Path, levels: &[Level], of_title: &str) -> Opened {
    let count = levels.len();
    let skip = count.saturating_sub(LEVELS);
    let (mut bars, mut folds, mut pieces) = (Vec::new(), Vec::new(), Vec::new());
    for (at, level) in levels.iter().enumerate().skip(skip) {
        let to = Path { steps: path.steps.iter().take(at.saturating_add(1)).cloned().collect() };
        bars.push(figures::bar(say, level, levels.get(at.saturating_add(1)), at.saturating_add(1) == count));
        pieces.push(level.statement.parts.iter().map(|part| opens(say, of, &to, part)).collect());
        folds.push(Place::Opened(of, to.to_string()));
    }
    let last = levels.last();
    let statement = last.map(|level| level.statement);
    let name = statement.map(|it| say.name(&it.rule)).unwrap_or_default();
    let deep = statement.map_or(0, |it| deeper(say, it));
    Opened {
        title: words::opened_in(&name, of_title),
        note: words::opened_deep(count, count.saturating_add(deep)),
        figure: last.map(|level| figure(say, level)).unwrap_or_default(),
        bars,
        folds,
        pieces,
        within: statement.map(|it| say.within(&it.rule)).unwrap_or_default(),
        how: statement.and_then(|it| say.how(&it.rule)),
        rows: last.map(|level| figures::rows(say, level, At { of, path })).unwrap_or_default(),
        entry: statement.and_then(|it| match it.rule {
            Rule::Draw { entry } => Some(Place::Entry(entry).href()),
            _ => None,
        }),
        remarks: statement.map(|it| Remarks::of(say, it)).unwrap_or_default(),
        fold: fold(say, of, path, levels),
        next: next(say, of, path, levels),
        name,
    }
}

fn figure(say: Say, level: &Level) -> String {
    let missing = || figures::missing(level.statement).to_owned();
    say.figure(level.shown, level.statement.value).unwrap_or_else(missing)
}

/// Where a piece opens; lines of the journal lead to their entry.
fn opens(say: Say, of: Id, path: &Path, part: &Part) -> Option<Place> {
    let further = |rule: &Rule| Place::Opened(of, path.to(rule.step()).to_string());
    match &part.of {
        PartOf::Statement(below) => (!below.parts.is_empty()).then(|| further(&below.rule)),
        PartOf::Entry { entry, working, .. } => {
            Some(say.opens(*entry, working).map_or(Place::Entry(*entry), |rule| further(&rule)))
        }
    }
}

/// How many levels are below.
fn deeper(say: Say, statement: &Statement) -> usize {
    let below = statement.parts.iter().map(|part| match &part.of {
        PartOf::Statement(below) => deeper(say, below).saturating_add(1),
        PartOf::Entry { entry, working, .. } => usize::from(say.opens(*entry, working).is_some()),
    });
    below.max().unwrap_or(0)
}

fn fold(say: Say, of: Id, path: &Path, levels: &[Level]) -> Way {
    let above = levels.len().checked_sub(2).and_then(|at| levels.get(at));
    match (path.up(), above) {
        (Some(up), Some(above)) => {
            (words::to(&say.within(&above.statement.rule)), Place::Opened(of, up.to_string()).href())
        }
        _ if is_across(path) => (crate::words::across::to_all().to_owned(), Place::Across.href()),
        _ if say.view.shop.lots.contains_key(&of) => way_back(of, false),
        _ => match levels.first().map(|level| &level.statement.rule) {
            Some(Rule::FromUsedUp | Rule::TaxBack | Rule::UsedUpByKind) => {
                (words::to_the_bridge().to_owned(), Place::Build(of, Tab::Spent).href())
            }
            _ => way_back(of, true),
        },
    }
}

/// The next piece along the bar that this one was opened from; after the last comes the first.
fn next(say: Say, of: Id, path: &Path, levels: &[Level]) -> Option<Way> {
    let (above, here) = (levels.get(levels.len().checked_sub(2)?)?, levels.last()?);
    let up = path.up()?;
    let at = figures::place_of(above.statement, &here.statement.rule)?;
    let parts: Vec<_> = above.statement.parts.iter().zip(&above.parts).collect();
    let (before, after) = parts.split_at_checked(at)?;
    let mut others = after.iter().skip(1).chain(before);
    others.find_map(|(part, shown)| {
        let Place::Opened(..) = opens(say, of, &up, part)? else { return None };
        let row = figures::row(say, true, part, **shown, At { of, path: &up });
        let name = part.statement().map_or(row.label, |below| say.within(&below.rule));
        Some((words::piece(&name, &row.figure), row.href?))
    })
}

fn whole(opened: Opened) -> AnyView {
    let go = expect_context::<Go>();
    let (folds, pieces) = (opened.folds, opened.pieces);
    let on_fold = move |level: usize| {
        if let Some(place) = folds.get(level) {
            go.to(place);
        }
    };
    let on_piece = move |(level, piece): (usize, usize)| {
        if let Some(place) = pieces.get(level).and_then(|it| it.get(piece)).and_then(Option::as_ref) {
            go.to(place);
        }
    };
    let how = opened.how.map(|how| view! { <p class="note">{how}</p> });
    let entry = opened.entry.map(|href| {
        view! { <RowLink label=words::the_draw().to_owned() end=words::in_the_journal().to_owned() leads=Leads::To(href)/> }
    });
    view! {
        <div class="cost-two">
            <div><Growth levels=opened.bars on_fold=Callback::new(on_fold) on_piece=Callback::new(on_piece)/>{how}</div>
            <div>
                <Sums>
                    {opened.rows.into_iter().map(figures::drawn).collect::<Vec<_>>()}
                    <SumTotal label=opened.name figure=opened.figure/>
                </Sums>
                {entry}
                {figures::remarks(opened.remarks)}
            </div>
        </div>
    }
}

fn hand((fold, to): Way, next: Option<Way>) -> AnyView {
    let next = next.map(|(note, to)| {
        view! { <KeyLink label=words::next_piece().to_owned() note=note href=Signal::stored(to)/> }
    });
    view! {
        <Hand name=words::keys().to_owned()>
            <Keys class="low">
                <KeyLink label=words::fold_back().to_owned() note=fold href=Signal::stored(to)/>
                {next}
            </Keys>
        </Hand>
    }
}
