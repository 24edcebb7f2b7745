//! A plain painter for egui's meshes: pictures of the window without a graphics driver, the same pixels on every run.
//!
//! The same arithmetic as a graphics card with bilinear filtering: vertices in 1/256 pixel, top-left fill rule, premultiplied colours.
#![allow(clippy::cast_possible_wrap, reason = "pixels of a picture are far below the limits")]

use egui::epaint::{ClippedPrimitive, ImageData, ImageDelta, Primitive, TextureId};
use egui::{Color32, ColorImage, TextureFilter, TexturesDelta};
use std::collections::HashMap;

struct Texture {
    image: ColorImage,
    nearest: bool,
}

#[derive(Default)]
pub struct SoftRenderer {
    textures: HashMap<TextureId, Texture>,
}

impl SoftRenderer {
    fn set(&mut self, id: TextureId, delta: &ImageDelta) {
        let ImageData::Color(new) = &delta.image;
        match delta.pos {
            None => {
                let nearest = delta.options.magnification == TextureFilter::Nearest;
                self.textures.insert(id, Texture { image: (**new).clone(), nearest });
            }
            Some([x0, y0]) => {
                let old = &mut self.textures.get_mut(&id).expect("patch of an unknown texture").image;
                let [w, h] = new.size;
                for y in 0..h {
                    let to = (y0 + y) * old.size[0] + x0;
                    old.pixels[to..to + w].copy_from_slice(&new.pixels[y * w..(y + 1) * w]);
                }
            }
        }
    }

    pub fn apply(&mut self, delta: &mut TexturesDelta) {
        for (id, images) in delta.set.drain() {
            for image in &images {
                self.set(id, image);
            }
        }
        for id in delta.free.drain() {
            self.textures.remove(&id);
        }
    }

    pub fn paint(&self, prims: &[ClippedPrimitive], ppp: f32, w: usize, h: usize) -> Vec<Color32> {
        let mut out = vec![Color32::TRANSPARENT; w * h];
        for p in prims {
            let Primitive::Mesh(mesh) = &p.primitive else { continue };
            let Some(tex) = self.textures.get(&mesh.texture_id) else { continue };
            let clip = p.clip_rect;
            let cx0 = ((clip.min.x * ppp).round().max(0.0) as usize).min(w);
            let cy0 = ((clip.min.y * ppp).round().max(0.0) as usize).min(h);
            let cx1 = ((clip.max.x * ppp).round().max(0.0) as usize).min(w);
            let cy1 = ((clip.max.y * ppp).round().max(0.0) as usize).min(h);
            for t in mesh.indices.chunks_exact(3) {
                let v = [&mesh.vertices[t[0] as usize], &mesh.vertices[t[1] as usize], &mesh.vertices[t[2] as usize]];
                // 1/256 pixel fixed point, as a GPU does
                let q = |f: f32| (f * ppp * 256.0).round() as i64;
                let mut p = v.map(|v| (q(v.pos.x), q(v.pos.y)));
                let mut v = v;
                let mut area = (p[1].0 - p[0].0) * (p[2].1 - p[0].1) - (p[1].1 - p[0].1) * (p[2].0 - p[0].0);
                if area == 0 {
                    continue;
                }
                if area < 0 {
                    p.swap(1, 2);
                    v.swap(1, 2);
                    area = -area;
                }
                let min_x = p.iter().map(|p| p.0).min().unwrap();
                let max_x = p.iter().map(|p| p.0).max().unwrap();
                let min_y = p.iter().map(|p| p.1).min().unwrap();
                let max_y = p.iter().map(|p| p.1).max().unwrap();
                let x0 = (((min_x - 128) >> 8).max(0) as usize).max(cx0);
                let x1 = ((((max_x + 128) >> 8) + 1).max(0) as usize).min(cx1);
                let y0 = (((min_y - 128) >> 8).max(0) as usize).max(cy0);
                let y1 = ((((max_y + 128) >> 8) + 1).max(0) as usize).min(cy1);
                if x0 >= x1 || y0 >= y1 {
                    continue;
                }
                let edge = |a: (i64, i64), b: (i64, i64), c: (i64, i64)| (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0);
                // top-left fill rule
                let bias = |a: (i64, i64), b: (i64, i64)| if (a.1 == b.1 && b.0 > a.0) || b.1 < a.1 { 0 } else { -1 };
                let b = [bias(p[1], p[2]), bias(p[2], p[0]), bias(p[0], p[1])];
                let flat = v[0].color == v[1].color && v[1].color == v[2].color;
                let flat_uv = v[0].uv == v[1].uv && v[1].uv == v[2].uv;
                let constant = (flat && flat_uv).then(|| shade(tex, v[0].uv.x, v[0].uv.y, col(v[0].color)));
                let inv = 1.0 / area as f32;
                for y in y0..y1 {
                    let py = (y as i64) * 256 + 128;
                    for x in x0..x1 {
                        let c = ((x as i64) * 256 + 128, py);
                        let w0 = edge(p[1], p[2], c);
                        let w1 = edge(p[2], p[0], c);
                        let w2 = edge(p[0], p[1], c);
                        if w0 + b[0] < 0 || w1 + b[1] < 0 || w2 + b[2] < 0 {
                            continue;
                        }
                        let src = constant.unwrap_or_else(|| {
                            let l = [w0 as f32 * inv, w1 as f32 * inv, w2 as f32 * inv];
                            let mix = |f: [f32; 3]| f[0] * l[0] + f[1] * l[1] + f[2] * l[2];
                            let k = [col(v[0].color), col(v[1].color), col(v[2].color)];
                            let color = std::array::from_fn(|i| mix([k[0][i], k[1][i], k[2][i]]));
                            shade(tex, mix([v[0].uv.x, v[1].uv.x, v[2].uv.x]), mix([v[0].uv.y, v[1].uv.y, v[2].uv.y]), color)
                        });
                        let d = &mut out[y * w + x];
                        let dst = col(*d);
                        let o: [u8; 4] =
                            std::array::from_fn(|i| ((src[i] + dst[i] * (1.0 - src[3])).clamp(0.0, 1.0) * 255.0 + 0.5) as u8);
                        *d = Color32::from_rgba_premultiplied(o[0], o[1], o[2], o[3]);
                    }
                }
            }
        }
        out
    }
}

fn col(c: Color32) -> [f32; 4] {
    c.to_array().map(|b| f32::from(b) / 255.0)
}

fn shade(tex: &Texture, u: f32, v: f32, color: [f32; 4]) -> [f32; 4] {
    let [w, h] = tex.image.size;
    let at = |x: i64, y: i64| col(tex.image.pixels[y.clamp(0, h as i64 - 1) as usize * w + x.clamp(0, w as i64 - 1) as usize]);
    let t = if tex.nearest {
        at((u * w as f32).floor() as i64, (v * h as f32).floor() as i64)
    } else {
        let (fx, fy) = (u * w as f32 - 0.5, v * h as f32 - 0.5);
        let (x, y) = (fx.floor(), fy.floor());
        let (ax, ay) = (fx - x, fy - y);
        let (x, y) = (x as i64, y as i64);
        let (a, b, c, d) = (at(x, y), at(x + 1, y), at(x, y + 1), at(x + 1, y + 1));
        std::array::from_fn(|i| (a[i] * (1.0 - ax) + b[i] * ax) * (1.0 - ay) + (c[i] * (1.0 - ax) + d[i] * ax) * ay)
    };
    std::array::from_fn(|i| t[i] * color[i])
}

impl egui_kittest::TestRenderer for SoftRenderer {
    fn handle_delta(&mut self, delta: &mut TexturesDelta) {
        self.apply(delta);
    }
    fn render(&mut self, ctx: &egui::Context, output: &egui::FullOutput) -> Result<image::RgbaImage, String> {
        let ppp = ctx.pixels_per_point();
        let size = ctx.content_rect().size() * ppp;
        let (w, h) = (size.x.round() as usize, size.y.round() as usize);
        let prims = ctx.tessellate(output.shapes.clone(), ppp);
        let px = self.paint(&prims, ppp, w, h);
        let bytes = px.iter().flat_map(Color32::to_srgba_unmultiplied).collect();
        image::RgbaImage::from_raw(w as u32, h as u32, bytes).ok_or_else(|| "size".into())
    }
}
