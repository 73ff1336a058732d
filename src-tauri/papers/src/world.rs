//! The only files and fonts the typesetter can see: our templates, our fonts, the paper's data and its
//! photos. No disk, no network, no clock.
//!
//! How the data is made is in `press`; how it is laid out is in `templates/`.

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

use crate::photos::Picture;

/// Every family in regular and bold, pictographs in regular alone, in the order the templates name them. Chinese,
/// Japanese and Korean are not among them: their fonts weigh more than the rest of the app.
const FAMILIES: [&[&[u8]]; 4] = [
    &[include_bytes!("../fonts/NotoSans-Regular.ttf"), include_bytes!("../fonts/NotoSans-Bold.ttf")],
    &[
        include_bytes!("../fonts/NotoSansHebrew-Regular.ttf"),
        include_bytes!("../fonts/NotoSansHebrew-Bold.ttf"),
    ],
    &[
        include_bytes!("../fonts/NotoSansArabic-Regular.ttf"),
        include_bytes!("../fonts/NotoSansArabic-Bold.ttf"),
    ],
    &[include_bytes!("../fonts/NotoEmoji-Regular.ttf")],
];

/// The bit of the family that has the pictographs, the last.
pub(crate) const PICTOGRAPHS: u8 = 1 << (FAMILIES.len() - 1);

/// Every template, by the path it is imported under.
const TEMPLATES: [(&str, &str); 7] = [
    ("/before-after.typ", include_str!("../templates/before-after.typ")),
    ("/finding.typ", include_str!("../templates/finding.typ")),
    ("/machinist.typ", include_str!("../templates/machinist.typ")),
    ("/marks.typ", include_str!("../templates/marks.typ")),
    ("/note.typ", include_str!("../templates/note.typ")),
    ("/repair.typ", include_str!("../templates/repair.typ")),
    ("/shared.typ", include_str!("../templates/shared.typ")),
];

/// Where the bearing sits, drawn for each way of carrying a shaft.
const DRAWINGS: [(&str, &str); 6] = [
    ("/drawings/rigid.svg", include_str!("../templates/drawings/rigid.svg")),
    ("/drawings/rubber.svg", include_str!("../templates/drawings/rubber.svg")),
    ("/drawings/half-shaft.svg", include_str!("../templates/drawings/half-shaft.svg")),
    ("/drawings/rigid-output-speed.svg", include_str!("../templates/drawings/rigid-output-speed.svg")),
    ("/drawings/two-centres.svg", include_str!("../templates/drawings/two-centres.svg")),
    ("/drawings/tube.svg", include_str!("../templates/drawings/tube.svg")),
];

/// Which template starts a paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Template {
    Finding,
    Note,
    Repair,
    Machinist,
    BeforeAfter,
}

/// What all papers share: the library, the fonts, the templates.
pub(crate) struct Resources {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    families: Vec<Vec<Font>>,
    fonts: Vec<Font>,
    sources: Vec<Source>,
}

impl Resources {
    /// Reads fonts and templates; `None` if a font is not one.
    pub(crate) fn open() -> Option<Self> {
        let font = |bytes: &&'static [u8]| Font::new(Bytes::new(*bytes), 0);
        let families = FAMILIES
            .into_iter()
            .map(|family| family.iter().map(font).collect::<Option<Vec<_>>>())
            .collect::<Option<Vec<_>>>()?;
        let fonts: Vec<Font> = families.iter().flatten().cloned().collect();
        let sources = TEMPLATES
            .into_iter()
            .map(|(path, text)| Some(Source::new(file_id(path)?, text.to_owned())))
            .collect::<Option<Vec<_>>>()?;
        Some(Self {
            library: LazyHash::new(Library::default()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            families,
            fonts,
            sources,
        })
    }

    /// The families that have a glyph for `c` in every weight of theirs, one bit each.
    pub(crate) fn families_with(&self, c: char) -> u8 {
        let has = |family: &[Font]| family.iter().all(|font| font.info().coverage.contains(c.into()));
        let families = self.families.iter().enumerate();
        families.filter(|(_, family)| has(family)).fold(0, |bits, (at, _)| bits | 1 << at)
    }
}

/// One paper's view of the world.
pub(crate) struct PaperWorld<'a> {
    resources: &'a Resources,
    main: FileId,
    files: Vec<(FileId, Bytes)>,
}

impl<'a> PaperWorld<'a> {
    pub(crate) fn new(
        resources: &'a Resources,
        template: Template,
        data: impl IntoIterator<Item = (&'static str, Bytes)>,
        pictures: &[Picture<'_>],
    ) -> Option<Self> {
        let main = match template {
            Template::Finding => file_id("/finding.typ")?,
            Template::Note => file_id("/note.typ")?,
            Template::Repair => file_id("/repair.typ")?,
            Template::Machinist => file_id("/machinist.typ")?,
            Template::BeforeAfter => file_id("/before-after.typ")?,
        };
        let data = data.into_iter().map(|(path, bytes)| (path.to_owned(), bytes));
        let drawings = DRAWINGS.iter().map(|(path, svg)| ((*path).to_owned(), Bytes::from_string(*svg)));
        let photos = pictures.iter().map(|picture| (picture.path(), picture.jpeg.clone()));
        let files = data
            .chain(drawings)
            .chain(photos)
            .map(|(path, bytes)| Some((file_id(&path)?, bytes)))
            .collect::<Option<Vec<_>>>()?;
        Some(Self { resources, main, files })
    }
}

impl World for PaperWorld<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.resources.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.resources.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let found = self.resources.sources.iter().find(|source| source.id() == id);
        found.cloned().ok_or(FileError::AccessDenied)
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let found = self.files.iter().find(|(at, _)| *at == id);
        found.map(|(_, bytes)| bytes.clone()).ok_or(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.resources.fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

/// The typesetter's number for a path. It keeps every number it ever gave and has 65,535 of them, so
/// paths must come from a small fixed set and never hold a hash or a name.
fn file_id(path: &str) -> Option<FileId> {
    Some(RootedPath::new(VirtualRoot::Project, VirtualPath::new(path).ok()?).intern())
}
