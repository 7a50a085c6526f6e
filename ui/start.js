// Loads the program. The path is absolute, so that a reload on any page finds it.
import init from "/ui.js";

await init({ module_or_path: "/ui_bg.wasm" });
