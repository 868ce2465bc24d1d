//! What follows signals: texts, attributes, regions of nodes.

use super::{
    signal::Signal,
    value::Value,
    view::{AnyView, Drawn},
};
use leptos::{
    prelude::{Owner, RenderEffect, document, on_cleanup},
    tachys::renderer::dom::Dom,
};
use send_wrapper::SendWrapper;
use std::{borrow::Cow, cell::RefCell};
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, HtmlInputElement, Node, Text};

/// Closures as the builder keeps them. A boxed `dyn Fn` could be called in three ways, and the compiler writes each of
/// them for every closure; of these there is one.
pub trait Acts {
    fn act(&self);
}

/// Draws a region.
pub trait Draws {
    fn drawn(&self) -> AnyView;
}

impl<F: Fn()> Acts for F {
    fn act(&self) {
        self();
    }
}

impl<F: Fn() -> AnyView> Draws for F {
    fn drawn(&self) -> AnyView {
        self()
    }
}

/// Runs `act` now and after each change of a signal that it reads, as long as its owner is there.
pub fn follow(act: Box<dyn Acts>) {
    let effect = RenderEffect::new(move |_| act.act());
    if Owner::current().is_some() {
        let effect = SendWrapper::new(effect);
        on_cleanup(move || drop(effect));
    }
}

/// Sets what follows a value; `None` takes it away.
pub type Set = Box<dyn Fn(Option<&str>)>;

/// Gives `set` a value, and each later one; equal ones are not set again.
pub fn value(value: Value, set: Set) {
    match value {
        Value::Gone => set(None),
        Value::Text(text) => set(Some(&text)),
        Value::Live(value) => {
            let before: RefCell<Option<Option<Cow<'static, str>>>> = RefCell::new(None);
            follow(Box::new(move || {
                let now = settled(value.value());
                if before.borrow().as_ref() != Some(&now) {
                    set(now.as_deref());
                    before.replace(Some(now));
                }
            }));
        }
    }
}

/// A closure that gives a closure is read through, within the same effect.
fn settled(value: Value) -> Option<Cow<'static, str>> {
    match value {
        Value::Gone => None,
        Value::Text(text) => Some(text),
        Value::Live(value) => settled(value.value()),
    }
}

/// A text node that follows a signal.
pub fn text(signal: Signal<String>) -> AnyView {
    region(Box::new(move || AnyView::new(Drawn::Text(Cow::Owned(signal.get())))))
}

/// Nodes that are drawn anew after each change. A text is changed in its place.
pub fn region(draw: Box<dyn Draws>) -> AnyView {
    let region = Region::new();
    let all: Node = document().create_document_fragment().into();
    let _ = all.append_child(&region.first);
    follow(Box::new(move || region.show(draw.drawn())));
    AnyView::new(Drawn::Node(all))
}

/// A place among its parent's nodes: from its first text, which is its content where that is a text, to its last.
pub struct Region {
    pub first: Text,
    last: RefCell<Option<Text>>,
}

impl Region {
    pub fn new() -> Region {
        Region { first: Dom::create_text_node(""), last: RefCell::new(None) }
    }

    /// Replaces what stands in it.
    pub fn show(&self, view: AnyView) {
        let focus = self.clear();
        match view.take() {
            Drawn::Nothing => self.say(""),
            Drawn::Text(text) => self.say(&text),
            Drawn::Node(node) => {
                self.say("");
                if let (Some(parent), Some(last)) = (self.first.parent_node(), self.last()) {
                    let _ = parent.insert_before(&node, Some(&last));
                }
            }
        }
        if let Some(focus) = focus {
            focus.give_back(&self.first);
        }
    }

    fn say(&self, text: &str) {
        if self.first.data() != text {
            self.first.set_data(text);
        }
    }

    fn last(&self) -> Option<Text> {
        let mut last = self.last.borrow_mut();
        if last.is_none() {
            let made = Dom::create_text_node("");
            let after = self.first.next_sibling();
            self.first.parent_node()?.insert_before(&made, after.as_ref()).ok()?;
            *last = Some(made);
        }
        last.clone()
    }

    /// Takes out all nodes between the two texts; says where among them the focus was.
    fn clear(&self) -> Option<Focus> {
        let last = self.last.borrow();
        let last: &Node = last.as_ref()?;
        let focus = Focus::within(&self.first, last);
        while let Some(node) = self.first.next_sibling().filter(|node| node != last) {
            node.parent_node()?.remove_child(&node).ok()?;
        }
        focus
    }

    /// Takes the whole of it out of the page.
    pub fn leave(&self) {
        self.clear();
        if let Some(last) = self.last.borrow().as_ref() {
            last.unchecked_ref::<Element>().remove();
        }
        self.first.unchecked_ref::<Element>().remove();
    }
}

/// Where the focus was, by the way to it: what is drawn in place of that element gets it back.
struct Focus {
    /// The place among siblings at each level, from the region inwards.
    way: Vec<u32>,
    tag: String,
    caret: Option<(u32, u32)>,
}

impl Focus {
    fn within(first: &Text, last: &Node) -> Option<Focus> {
        let active = document().active_element()?;
        let parent = first.parent_node()?;
        // Cheap for all regions that the focus is not near.
        if parent == *active || !parent.contains(Some(&active)) {
            return None;
        }
        let mut way = Vec::new();
        let mut at: Node = active.clone().into();
        while let Some(above) = at.parent_node() {
            if above == parent {
                let place = steps(first, &at, last)?;
                way.push(place);
                way.reverse();
                let input = active.dyn_ref::<HtmlInputElement>();
                let caret = input.and_then(|it| {
                    Some((it.selection_start().ok().flatten()?, it.selection_end().ok().flatten()?))
                });
                return Some(Focus { way, tag: active.tag_name(), caret });
            }
            way.push(before(&at));
            at = above;
        }
        None
    }

    fn give_back(self, first: &Text) {
        let mut way = self.way.into_iter();
        let mut at: Option<Node> = Some(first.clone().into());
        for _ in 0..way.next().unwrap_or_default() {
            at = at.and_then(|node| node.next_sibling());
        }
        for place in way {
            at = at.and_then(|node| node.child_nodes().get(place));
        }
        let element = at.and_then(|node| node.dyn_into::<HtmlElement>().ok());
        let Some(element) = element.filter(|it| it.tag_name() == self.tag) else { return };
        let _ = element.focus();
        if let (Some(input), Some((from, to))) = (element.dyn_ref::<HtmlInputElement>(), self.caret) {
            let _ = input.set_selection_range(from, to);
        }
    }
}

/// Steps from `first` to `node`, if it stands before `last`.
fn steps(first: &Text, node: &Node, last: &Node) -> Option<u32> {
    let mut at: Node = first.clone().into();
    let mut steps = 0;
    while at != *node {
        at = at.next_sibling().filter(|it| it != last)?;
        steps += 1;
    }
    Some(steps)
}

/// How many siblings stand before a node.
fn before(node: &Node) -> u32 {
    let mut count = 0;
    let mut at = node.previous_sibling();
    while let Some(node) = at {
        count += 1;
        at = node.previous_sibling();
    }
    count
}
