//! What Typst can reach: our fonts and templates and nothing else, no file, no package, no font of the system, no clock.

use std::sync::LazyLock;

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

pub const REGULAR: &[u8] = include_bytes!("../../sheets/fonts/AtkinsonHyperlegibleNext-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../sheets/fonts/AtkinsonHyperlegibleNext-Bold.ttf");

/// The templates by the names under which they know each other.
const TEMPLATES: [(&str, &str); 9] = [
    ("look.typ", include_str!("../../sheets/look.typ")),
    ("parts.typ", include_str!("../../sheets/parts.typ")),
    ("plot.typ", include_str!("../../sheets/plot.typ")),
    ("id1.typ", include_str!("../../sheets/id1.typ")),
    ("a6.typ", include_str!("../../sheets/a6.typ")),
    ("a5.typ", include_str!("../../sheets/a5.typ")),
    ("a4.typ", include_str!("../../sheets/a4.typ")),
    ("brief.typ", include_str!("../../sheets/brief.typ")),
    ("report.typ", include_str!("../../sheets/report.typ")),
];

/// Parsed fonts and templates serve every sheet.
pub static SHEETS: LazyLock<SheetWorld> = LazyLock::new(SheetWorld::new);

/// Fonts and templates, the same for every sheet.
pub struct SheetWorld {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    templates: Vec<(&'static str, Source)>,
    none: FileId,
}

impl SheetWorld {
    fn new() -> SheetWorld {
        let fonts: Vec<Font> =
            [REGULAR, BOLD].into_iter().flat_map(|bytes| Font::iter(Bytes::new(bytes))).collect();
        SheetWorld {
            library: LazyHash::new(Library::default()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            templates: TEMPLATES.into_iter().filter_map(parsed).collect(),
            none: Source::detached(String::new()).id(),
        }
    }

    /// A template by its name.
    pub fn template(&self, name: &str) -> Option<&Source> {
        self.templates.iter().find(|(known, _)| *known == name).map(|(_, source)| source)
    }
}

fn parsed((name, text): (&'static str, &str)) -> Option<(&'static str, Source)> {
    let path = VirtualPath::new(name).ok()?;
    let id = RootedPath::new(VirtualRoot::Project, path).intern();
    Some((name, Source::new(id, text.to_owned())))
}

impl World for SheetWorld {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    /// None of the templates is the main file, since one is called by its name each time.
    fn main(&self) -> FileId {
        self.none
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let known = self.templates.iter().map(|(_, source)| source).find(|source| source.id() == id);
        known.cloned().ok_or_else(|| not_found(id))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        Err(not_found(id))
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.fonts.get(index).cloned()
    }

    /// What is printed does not depend on the day on which it is printed.
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

fn not_found(id: FileId) -> FileError {
    FileError::NotFound(id.vpath().get_without_slash().into())
}
