//! A list whose rows stay where they are as long as what they show stays.

use super::{
    live,
    view::{AnyView, Draw, Drawn, nothing},
};
use leptos::prelude::{Owner, document, untrack};
use std::cell::RefCell;
use web_sys::Node;

/// A row, what it was drawn from, and the nodes of it.
struct Row<T> {
    of: T,
    owner: Owner,
    nodes: Vec<Node>,
}

/// Draws each item once; after a change only those that were not there before. A row's own top nodes don't change.
pub fn each<T, V>(items: impl Fn() -> Vec<T> + 'static, draw: impl Fn(T) -> V + 'static) -> AnyView
where
    T: Clone + PartialEq + 'static,
    V: Draw,
{
    let end: Node = document().create_text_node("").into();
    let all: Node = document().create_document_fragment().into();
    let _ = all.append_child(&end);
    let rows: RefCell<Vec<Row<T>>> = RefCell::default();
    let Some(above) = Owner::current() else { return nothing() };
    live::follow(Box::new(move || {
        let items = items();
        let mut before = rows.take();
        let mut now = Vec::with_capacity(items.len());
        for of in items {
            let row = match before.iter().position(|row| row.of == of) {
                Some(at) => before.remove(at),
                None => {
                    let owner = above.child();
                    let view = owner.with(|| untrack(|| draw(of.clone()).draw()));
                    Row { of, owner, nodes: nodes(view) }
                }
            };
            now.push(row);
        }
        for row in before {
            row.owner.cleanup();
            row.nodes.iter().for_each(remove);
        }
        stand(&now, &end);
        rows.replace(now);
    }));
    AnyView::new(Drawn::Node(all))
}

/// Moves only what does not stand in its place yet.
fn stand<T>(rows: &[Row<T>], end: &Node) {
    let Some(parent) = end.parent_node() else { return };
    let mut after = end.clone();
    for node in rows.iter().rev().flat_map(|row| row.nodes.iter().rev()) {
        if after.previous_sibling().as_ref() != Some(node) {
            let _ = parent.insert_before(node, Some(&after));
        }
        after = node.clone();
    }
}

fn remove(node: &Node) {
    if let Some(parent) = node.parent_node() {
        let _ = parent.remove_child(node);
    }
}

fn nodes(view: AnyView) -> Vec<Node> {
    match view.take() {
        Drawn::Nothing => Vec::new(),
        Drawn::Text(text) => vec![document().create_text_node(&text).into()],
        Drawn::Node(node) if node.node_type() == Node::DOCUMENT_FRAGMENT_NODE => {
            let children = node.child_nodes();
            (0..children.length()).filter_map(|at| children.get(at)).collect()
        }
        Drawn::Node(node) => vec![node],
    }
}
