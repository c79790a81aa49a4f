//! Finding things as a person does: by what they are and what they are called.

/// What a thing is, and its name as a screen reader says it.
#[derive(Clone, Debug)]
pub struct Named {
    pub(crate) role: &'static str,
    pub(crate) name: String,
    pub(crate) is_start: bool,
}

impl Named {
    fn new(role: &'static str, name: &str) -> Self {
        Self { role, name: name.to_owned(), is_start: false }
    }

    /// Its name begins so: the rest is figures.
    #[must_use]
    pub fn starting(mut self) -> Self {
        self.is_start = true;
        self
    }
}

impl std::fmt::Display for Named {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} “{}{}”", self.role, self.name, if self.is_start { "…" } else { "" })
    }
}

macro_rules! roles {
    ($($(#[$doc:meta])* $role:ident)*) => {$(
        $(#[$doc])*
        #[must_use]
        pub fn $role(name: &str) -> Named {
            Named::new(stringify!($role), name)
        }
    )*};
}

roles! {
    /// Something that went wrong.
    alert
    /// A button.
    button
    /// A choice out of a list.
    combobox
    /// A group of controls.
    group
    /// A heading.
    heading
    /// A picture.
    image
    /// A link.
    link
    /// A list.
    list
    /// A search field.
    searchbox
    /// A line that says how things stand.
    status
    /// A table.
    table
    /// A field for text.
    textbox
}
