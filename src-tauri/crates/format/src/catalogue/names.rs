//! The words that mean the domain's choices in an exercise file. Each list is complete.

use exercises::catalogue::Arms;
use exercises::catalogue::Feet;
use exercises::catalogue::{Contact, Eyes, Factor, Furniture, Kind, Landmark, Region, Sidedness, Surface, View};
use std::sync::LazyLock;

/// Words in a file, each with the value that it means.
pub(super) type Names<T> = &'static [(&'static str, T)];

pub(super) const REGIONS: Names<Region> = &[
    ("neck-upper-back", Region::NeckUpperBack),
    ("shoulder", Region::Shoulder),
    ("wrist-hand", Region::WristHand),
    ("low-back", Region::LowBack),
    ("hip", Region::Hip),
    ("knee", Region::Knee),
    ("ankle", Region::Ankle),
];

/// The kinds by name; each kind defines its own name.
pub(super) static KINDS: LazyLock<Vec<(&str, Kind)>> =
    LazyLock::new(|| Kind::ALL.iter().map(|kind| (kind.rules().name(), *kind)).collect());

pub(super) const SIDES: Names<Sidedness> = &[("none", Sidedness::None), ("each-side", Sidedness::EachSide)];

pub(super) const FACTORS: Names<Factor> = &[
    ("surface", Factor::Surface),
    ("base", Factor::Base),
    ("support", Factor::Support),
    ("lever", Factor::Lever),
    ("range", Factor::Range),
    ("load", Factor::Load),
    ("position", Factor::Position),
];

pub(super) const SURFACES: Names<Surface> = &[
    ("firm", Surface::Firm),
    ("folded-towel", Surface::FoldedTowel),
    ("cushion", Surface::Cushion),
    ("foam", Surface::Foam),
];

pub(super) const EYES: Names<Eyes> = &[("open", Eyes::Open), ("closed", Eyes::Closed)];

pub(super) const FEET: Names<Feet> = &[("bare", Feet::Bare), ("covered", Feet::Covered)];

/// `HandInUse` is missing here, because an exercise never prescribes it.
pub(super) const ARMS: Names<Arms> = &[("crossed", Arms::Crossed), ("on-hips", Arms::OnHips), ("free", Arms::Free)];

pub(super) const VIEWS: Names<View> = &[("side", View::Side), ("front", View::Front), ("hand", View::Hand)];

pub(super) const FURNITURE: Names<Furniture> = &[
    ("chair", Furniture::Chair),
    ("worktop", Furniture::Worktop),
    ("wall", Furniture::Wall),
    ("mat", Furniture::Mat),
    ("pillow", Furniture::Pillow),
    ("folded-towel", Furniture::FoldedTowel),
    ("cushion", Furniture::Cushion),
    ("foam", Furniture::Foam),
    ("table", Furniture::Table),
    ("bag", Furniture::Bag),
];

pub(super) const CONTACTS: Names<Contact> = &[
    ("seat", Contact::Seat),
    ("upper-back", Contact::UpperBack),
    ("far-side", Contact::FarSide),
    ("near-sole", Contact::NearSole),
    ("far-sole", Contact::FarSole),
    ("near-toes", Contact::NearToes),
    ("far-toes", Contact::FarToes),
    ("near-heel", Contact::NearHeel),
    ("far-heel", Contact::FarHeel),
    ("near-hand", Contact::NearHand),
    ("far-hand", Contact::FarHand),
];

pub(super) const LANDMARKS: Names<Landmark> = &[
    ("chin", Landmark::Chin),
    ("crown", Landmark::Crown),
    ("shoulder", Landmark::Shoulder),
    ("elbow", Landmark::Elbow),
    ("hand", Landmark::Hand),
    ("pelvis", Landmark::Pelvis),
    ("knee", Landmark::Knee),
    ("heel", Landmark::Heel),
    ("toes", Landmark::Toes),
];
