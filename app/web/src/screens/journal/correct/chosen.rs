//! One of many in a form that puts right: what is chosen from, and the code that the form keeps for each.

use crate::{
    parts::pick::Choosable,
    screens::{hours::choices, journal::line},
    shell::desk::View,
    words::{common, income, journal as words, publishing, tools},
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{DaysOf, DueWhat, HandedOver, IncomeKind, Link, OutsiderKind, ToolFrom},
        shop::Step,
    },
    measure::InOrder,
};

/// What is chosen from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choices {
    Tool,
    Stage,
    Person,
    IncomeKind,
    ToolFrom,
    /// A build; there must be one.
    OneBuild,
    /// Money that came in or will, or none.
    Income,
    /// How far culled timber had come.
    Link,
    /// Somebody else too, or nobody.
    Another,
    /// A step of a build that is open, or none.
    Step,
    /// What there is a count of, or none.
    Resource,
    /// What somebody outside is to the shop.
    OutsiderKind,
    /// What is owed.
    DueWhat,
    /// Which days a lead counts.
    DaysOf,
    /// Somebody outside, or nobody.
    Outsider,
    /// Something else that is owed, or the publish date.
    Due,
}

impl Choices {
    /// What there is to choose.
    pub fn of(self) -> fn(&View, &str) -> Vec<Choosable> {
        match self {
            Choices::Tool => tools_here,
            Choices::Stage => choices::stages,
            Choices::Person => choices::people,
            Choices::IncomeKind => income_kinds,
            Choices::ToolFrom => tool_froms,
            Choices::OneBuild => |view, keep| {
                let mut builds = choices::builds(view, keep);
                builds.retain(|(code, _)| !code.is_empty());
                builds
            },
            Choices::Income => incomes,
            Choices::Link => links,
            Choices::Another => another,
            Choices::Step => steps,
            Choices::Resource => resources,
            Choices::OutsiderKind => {
                |_, _| numbered(OUTSIDER_KINDS.iter().map(|it| publishing::outsider_kind(*it)))
            }
            Choices::DueWhat => |_, _| numbered(DUE_WHATS.iter().map(|it| publishing::due_what(*it))),
            Choices::DaysOf => |_, _| numbered(DAYS_OF.iter().map(|it| publishing::days_of(*it))),
            Choices::Outsider => outsiders,
            Choices::Due => dues,
        }
    }
}

fn another(view: &View, keep: &str) -> Vec<Choosable> {
    let mut all = vec![(String::new(), common::none().to_owned())];
    all.extend(choices::people(view, keep));
    all
}

/// Those thought of last first: a step comes after what was written down before it.
fn steps(view: &View, keep: &str) -> Vec<Choosable> {
    let mut open: Vec<_> = view.shop.steps.iter().collect();
    open.retain(|(id, it)| it.done().is_none() || id.to_string() == keep);
    open.order_by_key(|(id, it)| std::cmp::Reverse((it.order, **id)));
    let title = |build| view.shop.builds.get(&build).map(|it| it.title.clone()).unwrap_or_default();
    let mut all = vec![(String::new(), common::none().to_owned())];
    let named = |(id, it): (&Id, &Step)| (id.to_string(), words::step_of(&it.body.title, &title(it.build())));
    all.extend(open.into_iter().map(named));
    all
}

fn resources(view: &View, _: &str) -> Vec<Choosable> {
    let mut all = vec![(String::new(), common::none().to_owned())];
    all.extend(view.shop.resources.iter().map(|(id, it)| (id.to_string(), it.name.clone())));
    all
}

const OUTSIDER_KINDS: [OutsiderKind; 3] = [OutsiderKind::Sponsor, OutsiderKind::Client, OutsiderKind::Shop];
const DUE_WHATS: [DueWhat; 5] =
    [DueWhat::Review, DueWhat::Mention, DueWhat::Link, DueWhat::ExclusiveUntil, DueWhat::Other];
/// In the order in which they are chosen.
pub const DAYS_OF: [DaysOf; 3] = [DaysOf::Calendar, DaysOf::Working, DaysOf::Theirs];
const INCOME_KINDS: [IncomeKind; 7] = [
    IncomeKind::Sale,
    IncomeKind::Commission,
    IncomeKind::Sponsor,
    IncomeKind::AdShare,
    IncomeKind::Affiliate,
    IncomeKind::Plans,
    IncomeKind::Other,
];
const TOOL_FROMS: [ToolFrom; 3] = [ToolFrom::Bought, ToolFrom::Supplied, ToolFrom::Lent];
/// In the order of the chain.
pub const LINKS: [Link; 3] = [Link::Gathered, Link::NailsOut, Link::Milled];
const HANDED: [HandedOver; 3] = [HandedOver::Sold, HandedOver::Given, HandedOver::Kept];
/// The codes of what became of items.
pub const HANDED_CODES: [&str; 3] = ["sold", "given", "kept"];

/// The place of it in its list, as a form keeps it.
fn code<T: PartialEq>(all: &[T], it: &T) -> String {
    all.iter().position(|other| other == it).unwrap_or(0).to_string()
}

fn at<T: Copy>(all: &[T], code: &str) -> Option<T> {
    all.get(code.parse::<usize>().ok()?).copied()
}

fn numbered(words: impl Iterator<Item = &'static str>) -> Vec<Choosable> {
    words.enumerate().map(|(at, word)| (at.to_string(), word.to_owned())).collect()
}

fn income_kinds(_: &View, _: &str) -> Vec<Choosable> {
    numbered(INCOME_KINDS.iter().map(|kind| income::kind(*kind)))
}

fn tool_froms(_: &View, _: &str) -> Vec<Choosable> {
    numbered(TOOL_FROMS.iter().map(|from| tools::come_by(*from)))
}

fn tools_here(view: &View, keep: &str) -> Vec<Choosable> {
    let here = view.shop.tools.iter().map(|(id, tool)| (id.to_string(), tool));
    let here = here.filter(|(code, tool)| tool.gone.is_none() || code == keep);
    here.map(|(code, tool)| (code, tool.name.clone())).collect()
}

fn incomes(view: &View, _: &str) -> Vec<Choosable> {
    let mut all = vec![(String::new(), common::none().to_owned())];
    let latest = view.shop.incomes.iter().rev().map(|it| it.order.entry);
    all.extend(latest.map(|entry| (entry.to_string(), line::what(view, entry))));
    all
}

fn outsiders(view: &View, _: &str) -> Vec<Choosable> {
    let mut all = vec![(String::new(), common::none().to_owned())];
    all.extend(view.shop.outsiders.iter().map(|(id, it)| (id.to_string(), it.name.clone())));
    all
}

fn dues(view: &View, _: &str) -> Vec<Choosable> {
    let mut all = vec![(String::new(), publishing::the_publish_date().to_owned())];
    all.extend(view.shop.dues.keys().map(|id| (id.to_string(), line::what(view, *id))));
    all
}

pub fn outsider_kind_code(kind: OutsiderKind) -> String {
    code(&OUTSIDER_KINDS, &kind)
}

pub fn outsider_kind(code: &str) -> Option<OutsiderKind> {
    at(&OUTSIDER_KINDS, code)
}

pub fn due_what_code(what: DueWhat) -> String {
    code(&DUE_WHATS, &what)
}

pub fn due_what(code: &str) -> Option<DueWhat> {
    at(&DUE_WHATS, code)
}

pub fn days_of_code(of: DaysOf) -> String {
    code(&DAYS_OF, &of)
}

pub fn days_of(code: &str) -> Option<DaysOf> {
    at(&DAYS_OF, code)
}

pub fn income_kind_code(kind: IncomeKind) -> String {
    code(&INCOME_KINDS, &kind)
}

pub fn income_kind(code: &str) -> Option<IncomeKind> {
    at(&INCOME_KINDS, code)
}

fn links(_: &View, _: &str) -> Vec<Choosable> {
    numbered(LINKS.iter().map(|link| words::link(*link)))
}

pub fn link_code(link: Link) -> String {
    code(&LINKS, &link)
}

pub fn link(code: &str) -> Option<Link> {
    at(&LINKS, code)
}

pub fn tool_from_code(from: ToolFrom) -> String {
    code(&TOOL_FROMS, &from)
}

pub fn tool_from(code: &str) -> Option<ToolFrom> {
    at(&TOOL_FROMS, code)
}

pub fn handed_code(how: HandedOver) -> &'static str {
    HANDED.iter().position(|it| *it == how).and_then(|at| HANDED_CODES.get(at)).copied().unwrap_or_default()
}

/// What became of them; sold, until something else is chosen.
pub fn handed(code: &str) -> HandedOver {
    let at = HANDED_CODES.iter().position(|it| *it == code).unwrap_or(0);
    HANDED.get(at).copied().unwrap_or(HandedOver::Sold)
}

/// Their words, in the order of the codes.
pub fn handed_words() -> [&'static str; 3] {
    HANDED.map(income::handed_how)
}
