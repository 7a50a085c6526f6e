//! The camera, if the web view has access to one.

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::{document, window};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, HtmlVideoElement, MediaStream, MediaStreamTrack};

/// Largest width of a picture that is read, in pixels: enough for a card's code, and fast to send.
const WIDEST: f64 = 1280.0;
/// JPEG quality of a picture, 0 to 1; high, because a code has hard edges.
const QUALITY: f64 = 0.92;

/// Whether the web view supports cameras at all; whether there is one is known only when it is requested.
pub fn is_known() -> bool {
    request().is_ok()
}

/// Opens the camera that faces away from the person, or the only one.
///
/// # Errors
/// There is no camera, it is in use, or the person or the system refused permission.
pub async fn open() -> Result<MediaStream, JsValue> {
    let (devices, request) = request()?;
    let wanted =
        js_sys::JSON::parse(r#"{"video": {"facingMode": "environment", "width": {"ideal": 1280}}, "audio": false}"#)?;
    let asked: Promise = request.call1(&devices, &wanted)?.dyn_into()?;
    JsFuture::from(asked).await?.dyn_into()
}

/// Closes the camera; its light goes out.
pub fn close(stream: &MediaStream) {
    for track in stream.get_tracks() {
        if let Ok(track) = track.dyn_into::<MediaStreamTrack>() {
            track.stop();
        }
    }
}

/// The camera's present picture, as the bytes of a JPEG in Base64; `None` before its first picture.
pub fn picture(video: &HtmlVideoElement) -> Option<String> {
    let (width, height) = (f64::from(video.video_width()), f64::from(video.video_height()));
    if width < 1.0 || height < 1.0 {
        return None;
    }
    let scale = (WIDEST / width).min(1.0);
    let canvas: HtmlCanvasElement = document().create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width((width * scale) as u32);
    canvas.set_height((height * scale) as u32);
    let drawn: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    drawn.draw_image_with_html_video_element_and_dw_and_dh(video, 0.0, 0.0, width * scale, height * scale).ok()?;
    let address = canvas.to_data_url_with_type_and_encoder_options("image/jpeg", &QUALITY.into()).ok()?;
    address.split_once(',').map(|(_, bytes)| bytes.to_owned())
}

fn request() -> Result<(JsValue, Function), JsValue> {
    let devices = Reflect::get(&window().navigator(), &"mediaDevices".into())?;
    let request: Function = Reflect::get(&devices, &"getUserMedia".into())?.dyn_into()?;
    Ok((devices, request))
}
