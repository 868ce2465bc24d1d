//! A view: nodes that are ready to stand in the page.

use super::{Element, live, signal::Signal};
use leptos::{
    prelude::{IntoView, document},
    tachys::renderer::dom::Dom,
};
use send_wrapper::SendWrapper;
use std::{any::Any, borrow::Cow};
use web_sys::Node;

/// Drawn nodes. Put into an element once; what changes in them later changes by itself.
pub struct AnyView(SendWrapper<Drawn>);

/// Several nodes are a fragment of the document: put in its place it leaves its children there.
pub(super) enum Drawn {
    Nothing,
    Text(Cow<'static, str>),
    Node(Node),
}

impl AnyView {
    pub(super) fn new(drawn: Drawn) -> AnyView {
        AnyView(SendWrapper::new(drawn))
    }

    pub(super) fn take(self) -> Drawn {
        self.0.take()
    }

    /// Puts it at the end of a node.
    pub(super) fn put_into(self, parent: &Node) {
        let node = match self.take() {
            Drawn::Nothing => return,
            Drawn::Text(text) => Dom::create_text_node(&text).into(),
            Drawn::Node(node) => node,
        };
        let _ = parent.append_child(&node);
    }
}

/// What may stand in braces, or in place of a child.
pub trait Draw {
    /// Draws it, once.
    fn draw(self) -> AnyView;
}

impl Draw for AnyView {
    fn draw(self) -> AnyView {
        self
    }
}

impl Draw for Element {
    fn draw(self) -> AnyView {
        self.view()
    }
}

impl Draw for () {
    fn draw(self) -> AnyView {
        nothing()
    }
}

impl Draw for &'static str {
    fn draw(self) -> AnyView {
        AnyView::new(Drawn::Text(Cow::Borrowed(self)))
    }
}

impl Draw for String {
    fn draw(self) -> AnyView {
        AnyView::new(Drawn::Text(Cow::Owned(self)))
    }
}

impl<T: Draw> Draw for Option<T> {
    fn draw(self) -> AnyView {
        self.map_or_else(nothing, Draw::draw)
    }
}

impl<T: Draw> Draw for Vec<T> {
    fn draw(self) -> AnyView {
        several(self.into_iter().map(Draw::draw))
    }
}

impl<T: Draw, const N: usize> Draw for [T; N] {
    fn draw(self) -> AnyView {
        several(self.into_iter().map(Draw::draw))
    }
}

impl Draw for Signal<String> {
    fn draw(self) -> AnyView {
        live::text(self)
    }
}

/// A closure is drawn again whenever a signal that it reads has changed.
impl<F, T> Draw for F
where
    F: Fn() -> T + 'static,
    T: Draw,
{
    fn draw(self) -> AnyView {
        live::region(Box::new(move || self().draw()))
    }
}

/// Nothing drawn.
pub fn nothing() -> AnyView {
    AnyView::new(Drawn::Nothing)
}

/// Views one beside the other.
pub fn several(views: impl IntoIterator<Item = AnyView>) -> AnyView {
    let all: Node = document().create_document_fragment().into();
    views.into_iter().for_each(|view| view.put_into(&all));
    AnyView::new(Drawn::Node(all))
}

/// What stands between the tags of a component.
pub type Children = Box<dyn FnOnce() -> AnyView>;

/// Boxed for the component's props.
pub fn children(draw: impl FnOnce() -> AnyView + 'static) -> Children {
    Box::new(draw)
}

/// What a component of ours returned: a view, though its signature only says that it can be turned into one.
pub fn component(drawn: impl IntoView + 'static) -> AnyView {
    let mut drawn = Some(drawn);
    match (&mut drawn as &mut dyn Any).downcast_mut().and_then(Option::take) {
        Some(view) => view,
        None => unreachable!("a component of another making"),
    }
}
