//! One entry as a line: what it says, what it came to, how it stands.

use super::facts;
use super::{publishing_facts, running_facts};
use crate::words::film;
use crate::words::income;
use crate::{
    screens::{
        buying,
        photos::{self, Pictured},
        receipts,
    },
    shell::desk::View,
    words::{Tongue, bench, common, drying as dries, gaps, journal as words, photos as photo_words},
};
use benchslate_core::{
    costing::{Amount, Amounts},
    journal::{
        Body, Id,
        kinds::{
            Bearer, BuyLine, Draw, Drying, FreeDay, Lot, Photo, Shelf, Shot, Side, Source, Span, Stretch,
            Take,
        },
        listing::{self, Listed, State},
        shop::Odd,
    },
    measure::{Day, Instant, Unit, film_time},
};

/// A line of the journal, said.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct Line {
    /// Which entry.
    pub entry: Option<Id>,
    /// Its time; empty for a whole day.
    pub time: String,
    /// In the second pen.
    pub kind: String,
    /// What it says.
    pub what: String,
    /// Under it.
    pub second: Option<String>,
    /// What it came to.
    pub amount: String,
    /// How many different things it has said.
    pub version: usize,
    /// It is struck out.
    pub struck: bool,
    /// Its photo.
    pub picture: Option<Pictured>,
}

/// A line in full.
pub fn line(view: &View, amounts: &Amounts, at: Listed, today: Day) -> Line {
    let said = said(view, at.entry);
    let amount = amounts.of(at.entry);
    let mut line = Line {
        entry: Some(at.entry),
        time: at.time.map(|at| view.tongue.time(at)).unwrap_or_default(),
        kind: said.kind,
        what: said.what,
        second: None,
        amount: amount.map_or_else(|| till(view, at.entry), |amount| came_to(view.tongue, amount)),
        version: 1,
        struck: false,
        picture: said.picture,
    };
    let mut under: Vec<String> = Vec::new();
    if let Some(standing) = listing::standing(view.journal, at.entry) {
        line.version = standing.version;
        line.struck = matches!(standing.state, State::Struck { .. });
        match standing.state {
            State::Struck { at } => under.push(words::struck_out(&near(view, at, today))),
            State::Newer => under.push(words::written_newer().to_owned()),
            State::Unreadable => under.push(words::cant_be_read().to_owned()),
            State::Stands => {}
        }
        if standing.heads > 1 {
            under.push(words::two_versions().to_owned());
        }
        if standing.version > 1 && !line.struck {
            under.extend(put_right(view, at.entry, today));
        }
    }
    under.extend(said.under);
    under.extend(amount.into_iter().filter_map(odd_amount).map(str::to_owned));
    under.extend(
        view.shop.odd.iter().filter(|(entry, _)| *entry == at.entry).filter_map(|(_, odd)| odd_words(odd)),
    );
    line.second = (!under.is_empty()).then(|| under.join("; "));
    line
}

/// The words by which a line is found: what it says, its day and its amounts, as `find::plain` compares them.
pub fn found_by(view: &View, amounts: &Amounts, at: Listed, day: &str) -> String {
    let said = said(view, at.entry);
    let mut text = said.kind;
    let mut add = |more: &str| {
        text.push(' ');
        text.push_str(more);
    };
    add(&said.what);
    said.under.iter().for_each(|under| add(under));
    add(day);
    match amounts.of(at.entry) {
        Some(Amount::Worked { seconds, .. }) => add(&view.tongue.hours(seconds)),
        Some(Amount::Used(Some(cost)) | Amount::Paid(Some(cost))) => add(&cost.shown(view.tongue.minor())),
        None => add(&till(view, at.entry)),
        Some(Amount::Used(None) | Amount::Paid(None)) => {}
    }
    benchslate_core::journal::find::plain(&text)
}

/// A moment: its time, with its day where that isn't today.
fn near(view: &View, at: Instant, today: Day) -> String {
    if view.shop.zone.day(at) == today { view.tongue.time(at) } else { moment(view, at) }
}

/// A moment: its day and time.
pub fn moment(view: &View, at: Instant) -> String {
    words::comma(&view.tongue.day_of(at), &view.tongue.time(at))
}

/// What an entry is called: the stage of a stretch, else its kind.
pub fn kind(view: &View, entry: Id) -> String {
    said(view, entry).kind
}

/// What an entry says, in a few words.
pub fn what(view: &View, entry: Id) -> String {
    said(view, entry).what
}

#[derive(Default)]
struct Said {
    kind: String,
    what: String,
    under: Vec<String>,
    picture: Option<Pictured>,
}

fn said(view: &View, entry: Id) -> Said {
    let Some(body) = view.journal.last_body(entry) else {
        let kind = view.journal.shown(entry).map(|shown| shown.kind.to_string());
        return Said { kind: kind.unwrap_or_default(), ..Said::default() };
    };
    let plain = |what: String| Said { kind: words::kind(body.kind()).to_owned(), what, ..Said::default() };
    match body {
        Body::Stretch(it) => stretch(view, it),
        Body::Draw(it) => draw(view, it),
        Body::Expense(it) => plain(with_side(it.what.clone(), it.side, Side::Piece)),
        Body::Note(it) => plain(it.text.clone()),
        Body::Drying(it) => drying(view, it),
        Body::Photo(it) => photo(view, it),
        Body::Lot(it) => lot(view, entry, it),
        Body::Trip(it) => plain(words::km(&view.tongue.number(&it.km.plain()))),
        Body::Sort(_) | Body::Cull(_) => sorted(view, body),
        Body::Find(it) => plain(words::comma(&it.name, it.whence.as_deref().unwrap_or_default())),
        Body::Shelf(it) => look(view, it),
        Body::BuyLine(it) => to_buy(view, it),
        Body::Build(it) => plain(it.title.clone()),
        Body::Person(it) => plain(it.name.clone()),
        Body::Stage(it) => plain(words::comma(&it.name, common::side(it.side))),
        Body::Item(it) => plain(it.name.clone()),
        Body::Receipt(it) => {
            let under = receipts::still_to_say(view, entry).into_iter().collect();
            Said { under, ..plain(it.whence.clone().unwrap_or_default()) }
        }
        Body::ByProduct(it) => plain(it.what.clone()),
        Body::Tool(it) => plain(it.name.clone()),
        Body::ToolHours(it) => plain(running_facts::tool(view, it.tool)),
        Body::Blade(it) => plain(words::comma(&it.what, &running_facts::tool(view, it.tool))),
        Body::MonthlyCost(it) => plain(it.what.clone()),
        Body::Income(it) => {
            let what = it.what.as_deref().unwrap_or_default();
            plain(words::comma(income::kind(it.kind), what))
        }
        Body::Made(it) => plain(income::made(it.good, it.spoiled.len())),
        Body::HandOver(it) => plain(income::handed(it.count, it.how)),
        Body::Film(it) => {
            let length = it.finished.map(|it| words::minutes(&view.tongue.number(&it.plain())));
            plain(length.unwrap_or_default())
        }
        Body::Step(it) => plain(it.title.clone()),
        Body::Part(it) => Said {
            under: vec![running_facts::part_size(view, it)],
            ..plain(crate::words::parts::so_many(it.count, &it.name))
        },
        Body::Resource(it) => plain(crate::words::parts::so_many(it.count, &it.name)),
        Body::FreeDay(it) => {
            Said { under: vec![free_day(view, it)], ..plain(facts::person(view, it.person)) }
        }
        Body::Chapter(it) => plain([&film_time::shown(it.at), " ", &it.title].concat()),
        Body::Outsider(it) => plain(it.name.clone()),
        Body::Due(it) => plain(publishing_facts::due(it)),
        Body::SeriesEnd(it) => plain(facts::bearer(view, Bearer::Build(it.build))),
        Body::Shot(it) => Said { under: waived(it), ..plain(it.what.clone()) },
        Body::Take(it) => Said { under: clip(it), ..plain(crate::screens::film::what(view, it.shot)) },
        Body::CardCopied(_) => plain(film::is_copied().to_owned()),
        Body::BuildState(it) => plain(income::state(it.state).to_owned()),
        Body::Retired(it) => Said {
            kind: crate::words::away::said(it.back).to_owned(),
            ..plain(crate::screens::away::name(view.shop, it.what))
        },
        Body::Same(it) => plain(words::same_as(
            &facts::item_as_typed(view, it.item),
            &gaps::name(view.shop, Source::Item(it.is)),
        )),
        Body::Setting(it) => plain(words::comma(words::setting(it.key), &super::setting::value(view, it))),
    }
}

fn to_buy(view: &View, it: &BuyLine) -> Said {
    let under = it.bought.map(|_| crate::words::buying::is_bought().to_owned()).into_iter().collect();
    let kind = words::kind(benchslate_core::journal::Kind::BuyLine).to_owned();
    Said { kind, what: words::comma(&buying::name(view, it), &buying::many(view, it)), under, picture: None }
}

fn free_day(view: &View, it: &FreeDay) -> String {
    let extra = crate::screens::shop::windows_text(view, &it.extra);
    let day = crate::words::free::days(&view.tongue.day(it.day), it.last.map(|it| view.tongue.day(it)));
    crate::words::free::off_or(&extra, &day)
}

fn waived(it: &Shot) -> Vec<String> {
    it.waived.map(|_| film::waived().to_owned()).into_iter().collect()
}

fn clip(it: &Take) -> Vec<String> {
    let said = film::clip_and_keeper(it.clip.as_deref().unwrap_or_default(), it.keep);
    Some(said).filter(|text| !text.is_empty()).into_iter().collect()
}

fn lot(view: &View, entry: Id, it: &Lot) -> Said {
    let name = gaps::name(view.shop, Source::Lot(entry));
    let name = if view.shop.lots.contains_key(&entry) { name } else { it.name.clone() };
    let rough = facts::amount(view, it.rough, it.unit, Source::Lot(entry));
    let under = vec![words::comma(words::origin(it.origin), it.whence.as_deref().unwrap_or_default())];
    let kind = words::kind(benchslate_core::journal::Kind::Lot).to_owned();
    Said { kind, what: words::comma(&name, &rough), under, picture: None }
}

fn photo(view: &View, it: &Photo) -> Said {
    // One of another photo says no more: two could name each other.
    let of = it.entry.and_then(|of| Some((of, view.journal.last_body(of)?)));
    let of = of.filter(|(_, body)| !matches!(body, Body::Photo(_))).map(|(of, _)| said(view, of));
    let under = of.map(|of| photo_words::of_line(&of.kind, &of.what)).into_iter().collect();
    let kind = words::kind(benchslate_core::journal::Kind::Photo).to_owned();
    Said {
        kind,
        what: it.caption.clone().unwrap_or_default(),
        under,
        picture: Some(photos::pictured(view, it)),
    }
}

/// `counted discs, 18`.
fn look(view: &View, it: &Shelf) -> Said {
    let many = it.quantity.map(|many| facts::looked(view, many, it)).unwrap_or_default();
    let what = words::comma(&gaps::name(view.shop, it.of), &many);
    let (kind, under) =
        (crate::words::shelf::look(it.state).to_owned(), it.note.clone().into_iter().collect());
    Said { kind, what, under, picture: None }
}

fn stretch(view: &View, it: &Stretch) -> Said {
    let mut what = facts::person(view, it.person);
    let rolled = Span::whole(&it.rolling);
    if !rolled.is_zero() {
        what = words::comma(&what, &words::rolling(&view.tongue.hours(rolled)));
    }
    let usual = view.shop.stages.get(&it.stage).map_or(it.side, |stage| stage.side);
    let mut under: Vec<String> = it.note.clone().into_iter().collect();
    if it.from.is_some() && it.to.is_none() {
        let paused = it.pauses.iter().any(|pause| pause.to.is_none());
        under.push(if paused { words::clock_paused() } else { words::clock_running() }.to_owned());
    }
    let what = with_side(what, it.side, usual);
    Said { kind: facts::stage(view, it.stage), what, under, ..Said::default() }
}

fn draw(view: &View, it: &Draw) -> Said {
    let kind = if it.returns.is_some() {
        words::came_back()
    } else {
        words::kind(benchslate_core::journal::Kind::Draw)
    };
    let name = gaps::name(view.shop, it.from);
    let what = words::comma(&name, &facts::amount(view, it.quantity, it.unit, it.from));
    Said {
        kind: kind.to_owned(),
        what: with_side(what, it.side.unwrap_or(Side::Piece), Side::Piece),
        under: it.note.clone().into_iter().collect(),
        ..Said::default()
    }
}

/// `dries glue-up, 24 h`, and under it until when.
fn drying(view: &View, it: &Drying) -> Said {
    let kind = words::kind(benchslate_core::journal::Kind::Drying).to_owned();
    let long = dries::length(view.tongue, facts::minutes(it.next));
    let Some(Body::Stretch(stretch)) = view.journal.body(it.stretch) else {
        return Said { kind, what: long, under: vec![words::names_gone().to_owned()], picture: None };
    };
    let end = stretch.to.map(|to| facts::after(to.instant, it.next));
    let until = end.map(|end| dries::until(&moment(view, end)));
    let item = it.item.map(|item| gaps::name(view.shop, Source::Item(item)));
    let what = words::comma(&facts::stage(view, stretch.stage), &long);
    Said { kind, what, under: until.into_iter().chain(item).collect(), picture: None }
}

/// The side is said where it isn't the usual one.
fn with_side(what: String, side: Side, usual: Side) -> String {
    if side == usual { what } else { words::comma(&what, &side_words(side)) }
}

fn side_words(side: Side) -> String {
    match side {
        Side::Piece | Side::Film => words::for_side(common::side(side)),
        Side::Both => bench::both().to_owned(),
    }
}

fn came_to(tongue: &Tongue, amount: Amount) -> String {
    match amount {
        Amount::Worked { seconds, runs: true, .. } => tongue.digits(seconds),
        Amount::Worked { seconds, .. } => tongue.hours(seconds),
        Amount::Used(Some(cost)) | Amount::Paid(Some(cost)) => tongue.money(cost),
        Amount::Used(None) | Amount::Paid(None) => words::no_figure().to_owned(),
    }
}

/// What a lot cost at the till, what was paid on a receipt, what came for a by-product or as income.
fn till(view: &View, entry: Id) -> String {
    let lot = view.shop.lots.get(&entry).and_then(benchslate_core::journal::shop::Lot::till);
    let receipt = view.shop.receipts.get(&entry).and_then(|receipt| receipt.total);
    let came = match view.journal.body(entry) {
        Some(Body::ByProduct(it)) => it.amount.money(),
        _ => None,
    };
    let income = view.shop.incomes.iter().find(|it| it.order.entry == entry).and_then(|it| it.arrived());
    lot.or(receipt).or(came).or(income).map(|money| view.tongue.money(money)).unwrap_or_default()
}

fn odd_amount(amount: Amount) -> Option<&'static str> {
    match amount {
        Amount::Worked { cut: true, .. } => Some(words::overlaps()),
        Amount::Worked { .. } | Amount::Used(_) | Amount::Paid(_) => None,
    }
}

fn odd_words(odd: &Odd) -> Option<String> {
    match odd {
        Odd::EndsBeforeStart => Some(words::ends_before_start().to_owned()),
        // Said by how the entry stands.
        Odd::Newer | Odd::Unreadable => None,
        Odd::LinesBeyondTotal => Some(words::lines_beyond_total().to_owned()),
        Odd::OutOfRange(_) | Odd::UnitDoesNotFit => Some(words::no_figure().to_owned()),
        Odd::SameAlready => Some(words::one_already().to_owned()),
        Odd::OtherCurrency => Some(words::other_currency().to_owned()),
        Odd::Lost { .. } => Some(words::names_gone().to_owned()),
    }
}

/// What was put right last.
fn put_right(view: &View, entry: Id, today: Day) -> Option<String> {
    let history = view.journal.history(entry);
    let bodies: Vec<(&Body, i64)> = history
        .iter()
        .filter_map(|revision| match &revision.content {
            benchslate_core::journal::Content::Body(body) => Some((body, revision.stamp.ms)),
            _ => None,
        })
        .collect();
    let pair = bodies.windows(2).rev().find_map(|pair| match pair {
        [(before, _), (after, at)] if listing::corrects(before, after) => Some((*before, *after, *at)),
        _ => None,
    });
    let (before, after, at) = pair?;
    if let (Body::Stretch(before), Body::Stretch(after)) = (before, after) {
        let time = |when: benchslate_core::measure::When| view.tongue.time(when.instant);
        if let Some(from) = before.from.filter(|from| after.from.is_some_and(|it| it != *from)) {
            return Some(words::start_moved(&time(from)));
        }
        if let Some(to) = before.to.filter(|to| after.to.is_some_and(|it| it != *to)) {
            return Some(words::end_moved(&time(to)));
        }
    }
    Some(words::corrected(&near(view, Instant(at.div_euclid(1000)), today)))
}

/// A sorting or a cull.
fn sorted(view: &View, body: &Body) -> Said {
    let amount = |lot: Id, typed| {
        let unit = view.shop.lots.get(&lot).map_or(Unit::Each, |lot| lot.unit);
        facts::amount(view, typed, unit, Source::Lot(lot))
    };
    let name = |lot: Id| gaps::name(view.shop, Source::Lot(lot));
    let kind = words::kind(body.kind()).to_owned();
    match body {
        Body::Sort(it) => {
            let found = words::good_and_culled(&amount(it.lot, it.good), &amount(it.lot, it.culled));
            Said { under: vec![found], kind, what: name(it.lot), ..Said::default() }
        }
        Body::Cull(it) => {
            let under = it.unexpected.then(|| words::not_to_be_expected().to_owned());
            let what = words::comma(&name(it.lot), &amount(it.lot, it.quantity));
            Said { under: under.into_iter().collect(), kind, what, ..Said::default() }
        }
        _ => Said::default(),
    }
}
