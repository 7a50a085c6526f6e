//! Writes a sheet as PDF/UA-1.

use crate::PaperError;
use crate::font::Fonts;
use crate::mark::{Mark, Paint, Way};
use crate::sheet::{Child, Content, Role, Sheet};
use crate::style::Colour;
use crate::text::told;
use exercises::figure::{Piece, Point};
use krilla::Document;
use krilla::SerializeSettings;
use krilla::color::rgb;
use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{Path, PathBuilder, Transform};
use krilla::metadata::Metadata;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, LineCap, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier, Node, SpanTag, TagGroup, TagTree};

/// What the file says of itself.
pub struct About<'a> {
    /// Its title.
    pub title: &'a str,
    /// Its language, as a tag.
    pub language: &'a str,
    /// Who made it.
    pub author: &'a str,
    /// The program that made it.
    pub program: &'a str,
}

/// The sheet as a file.
pub fn pdf(sheet: &Sheet, fonts: &Fonts, about: &About<'_>) -> Result<Vec<u8>, PaperError> {
    let fault = |what: &dyn std::fmt::Debug| PaperError::Internal(format!("{what:?}"));
    let as_ua = ConfigurationBuilder::new().with_accessibility_validator(Accessibility::UA1).finish();
    let configuration = as_ua.map_err(|error| fault(&error))?;
    let mut document = Document::new_with(SerializeSettings { configuration, ..SerializeSettings::default() });
    let (width, height) = sheet.size;
    let mut marked = Vec::new();
    for (at, contents) in sheet.pages.iter().enumerate() {
        let settings = PageSettings::from_wh(width, height).ok_or_else(|| fault(&sheet.size))?;
        let mut page = document.start_page_with(settings);
        let mut surface = page.surface();
        let behind = sheet.behind.iter().filter(|(page, _)| *page == at).map(|(_, marks)| marks.clone());
        behind.for_each(|marks| {
            put(&mut surface, fonts, &Content { marks, role: Role::Decoration });
        });
        marked.push(contents.iter().map(|content| put(&mut surface, fonts, content)).collect::<Vec<Identifier>>());
        surface.finish();
        page.finish();
    }
    let mut tree = TagTree::new();
    sheet.top.iter().for_each(|place| tree.push(group(sheet, *place, &marked)));
    document.set_tag_tree(tree);
    document.set_outline(outline(sheet));
    let author = Some(told(about.author)).filter(|author| !author.is_empty());
    let metadata = Metadata::new().title(told(about.title)).language(about.language.to_owned());
    document.set_metadata(metadata.authors(author.into_iter().collect()).creator(about.program.to_owned()));
    document.finish().map_err(|error| fault(&error))
}

fn outline(sheet: &Sheet) -> Outline {
    let mut outline = Outline::new();
    for chapter in &sheet.chapters {
        let to = XyzDestination::new(chapter.page, krilla::geom::Point::from_xy(0.0, chapter.y));
        outline.push_child(OutlineNode::new(chapter.title.clone(), to));
    }
    outline
}

fn group(sheet: &Sheet, place: usize, marked: &[Vec<Identifier>]) -> TagGroup {
    let element = &sheet.elements[place];
    let children = element.children.iter().map(|child| match *child {
        Child::Element(place) => Node::Group(group(sheet, place, marked)),
        Child::Content(page, at) => Node::Leaf(marked[page][at]),
    });
    TagGroup::with_children(element.tag.clone(), children.collect())
}

fn put(surface: &mut Surface<'_>, fonts: &Fonts, content: &Content) -> Identifier {
    let artifact = |kind| ContentTag::Artifact(Artifact::with_kind(kind));
    let identifier = surface.start_tagged(match &content.role {
        Role::Decoration => artifact(ArtifactType::Layout),
        Role::Foot => artifact(ArtifactType::Footer),
        Role::Part(Some(written)) => ContentTag::Span(SpanTag::empty().with_actual_text(Some(written))),
        Role::Part(None) => ContentTag::Other,
    });
    content.marks.iter().for_each(|mark| draw(surface, fonts, mark));
    surface.end_tagged();
    identifier
}

fn draw(surface: &mut Surface<'_>, fonts: &Fonts, mark: &Mark) {
    match mark {
        Mark::Text { from, face, size, ink, run, way } => {
            surface.set_fill(Some(fill(*ink)));
            surface.set_stroke(None);
            if *way == Way::Up {
                surface.push_transform(&Transform::from_row(0.0, -1.0, 1.0, 0.0, from.0, from.1));
            } else {
                surface.push_transform(&Transform::from_translate(from.0, from.1));
            }
            let origin = krilla::geom::Point::from_xy(0.0, 0.0);
            surface.draw_glyphs(origin, &run.glyphs, fonts.embedded(*face).clone(), &run.text, *size, false);
            surface.pop();
        }
        Mark::Shape { outline, paint } => {
            let (filled, stroked) = match *paint {
                Paint::Fill(colour) => (Some(fill(colour)), None),
                Paint::Line(colour, width, dash) => (None, Some(stroke(colour, width, dash))),
            };
            surface.set_fill(filled);
            surface.set_stroke(stroked);
            if let Some(path) = path(outline) {
                surface.draw_path(&path);
            }
        }
    }
}

fn rgb_of(Colour(red, green, blue): Colour) -> rgb::Color {
    rgb::Color::new(red, green, blue)
}

fn fill(colour: Colour) -> Fill {
    Fill { paint: rgb_of(colour).into(), ..Fill::default() }
}

fn stroke(colour: Colour, width: f32, dash: Option<(f32, f32)>) -> Stroke {
    let dash = dash.map(|(on, off)| StrokeDash { array: vec![on, off], offset: 0.0 });
    let paint = rgb_of(colour).into();
    Stroke { paint, width, dash, line_cap: LineCap::Round, line_join: LineJoin::Round, ..Stroke::default() }
}

fn path(outline: &[Piece]) -> Option<Path> {
    let mut builder = PathBuilder::new();
    // A hundredth of a point is finer than any printer; more digits would double the size of the file.
    let rounded = |length: f64| ((length * 100.0).round() / 100.0) as f32;
    let xy = |point: Point| (rounded(point.x), rounded(point.y));
    for piece in outline {
        match *piece {
            Piece::Move(a) => {
                let (x, y) = xy(a);
                builder.move_to(x, y);
            }
            Piece::Line(a) => {
                let (x, y) = xy(a);
                builder.line_to(x, y);
            }
            Piece::Curve(a, b, c) => {
                let ((x1, y1), (x2, y2), (x, y)) = (xy(a), xy(b), xy(c));
                builder.cubic_to(x1, y1, x2, y2, x, y);
            }
            Piece::Close => builder.close(),
        }
    }
    builder.finish()
}
