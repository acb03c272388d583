import { NodeProgram } from 'sigma/rendering'
import type { NodeProgramType, ProgramInfo } from 'sigma/rendering'
import type { NodeDisplayData, RenderParams } from 'sigma/types'
import { floatColor } from 'sigma/utils'

/** Form of a mark and how it is drawn, so that kinds differ without colour. */
export const FORMS = { ingredient: 0, role: 1, class: 2, limit: 3, more: 4, words: 5 } as const

/** Added to the form: the ring is dashed and the mark hollow (not known), or struck through (does not hold). */
export const DASHED = 8
export const STRUCK = 16

export interface MarkData extends NodeDisplayData {
  form: number
  line: string
}

const VERTEX = /* glsl */ `
attribute vec4 a_id;
attribute vec4 a_color;
attribute vec4 a_line;
attribute vec2 a_position;
attribute float a_size;
attribute float a_form;
attribute float a_angle;
uniform mat3 u_matrix;
uniform float u_sizeRatio;
uniform float u_correctionRatio;
uniform float u_least;
varying vec4 v_color;
varying vec4 v_line;
varying vec2 v_at;
varying float v_form;
varying float v_pixel;
const float bias = 255.0 / 254.0;
const float reach = 1.5;
void main() {
  #ifdef PICKING_MODE
  float radius = max(a_size, u_least * u_sizeRatio);
  #else
  float radius = a_size;
  #endif
  float unit = radius * u_correctionRatio / u_sizeRatio * 2.0;
  vec2 spoke = vec2(cos(a_angle), sin(a_angle)) * 2.0 * reach;
  gl_Position = vec4((u_matrix * vec3(a_position + spoke * unit, 1)).xy, 0, 1);
  v_at = spoke;
  v_form = a_form;
  v_pixel = u_sizeRatio / radius;
  #ifdef PICKING_MODE
  v_color = a_id;
  #else
  v_color = a_color;
  #endif
  v_line = a_line;
  v_color.a *= bias;
  v_line.a *= bias;
}
`

const FRAGMENT = /* glsl */ `
precision highp float;
varying vec4 v_color;
varying vec4 v_line;
varying vec2 v_at;
varying float v_form;
varying float v_pixel;
float outline(float form, vec2 at) {
  if (form < 0.5 || form > 3.5) return length(at) - 1.0;
  if (form < 1.5) return max(abs(at.x), abs(at.y)) - 0.92;
  if (form < 2.5) return (abs(at.x) + abs(at.y)) * 0.7071 - 0.86;
  return max(abs(at.x) * 0.866 + at.y * 0.5, -at.y) - 0.68;
}
void main(void) {
  float flags = floor(v_form / 8.0 + 0.01);
  float form = v_form - flags * 8.0;
  float dashed = mod(flags, 2.0);
  float struck = floor(flags / 2.0 + 0.01);
  #ifdef PICKING_MODE
  if (length(v_at) > 1.1 || form > 4.5) gl_FragColor = vec4(0.0);
  else gl_FragColor = v_color;
  #else
  if (form > 4.5) { gl_FragColor = vec4(0.0); return; }
  float away = outline(form, v_at);
  float soft = max(v_pixel, 0.02);
  float thick = max(form < 0.5 ? 0.2 : 0.3, 1.4 * v_pixel);
  float inside = 1.0 - smoothstep(-soft * 0.5, soft * 0.5, away);
  float ring = smoothstep(-thick - soft * 0.5, -thick + soft * 0.5, away);
  if (form > 1.5 && form < 2.5) ring = max(ring, 1.0 - smoothstep(-0.62 - soft, -0.62 + soft, away));
  if (form > 3.5) ring = max(ring, 1.0 - smoothstep(0.12, 0.2 + soft, min(abs(v_at.x), abs(v_at.y))));
  if (struck > 0.5) ring = max(ring, 1.0 - smoothstep(0.12, 0.12 + soft, abs(v_at.x + v_at.y) * 0.7071));
  float gap = dashed > 0.5 ? step(0.25, sin(atan(v_at.y, v_at.x) * 5.0)) : 0.0;
  vec4 color = mix(v_color, v_line, ring * (1.0 - gap));
  float alpha = inside * color.a;
  gl_FragColor = vec4(color.rgb * alpha, alpha);
  #endif
}
`

const { FLOAT, UNSIGNED_BYTE, TRIANGLES } = {
  FLOAT: 5126, // as in WebGLRenderingContext, which a program without a screen lacks
  UNSIGNED_BYTE: 5121,
  TRIANGLES: 4,
}

const TURNS = [0, (2 * Math.PI) / 3, (4 * Math.PI) / 3]
const UNIFORMS = ['u_sizeRatio', 'u_correctionRatio', 'u_matrix', 'u_least'] as const

/**
 * Marks in one go, three corners each: a browser that draws in software takes far longer for instances of one corner set.
 * Disc, square, diamond, triangle, each with fill and ring.
 * @param least_px radius that a pointer finds
 */
export function markProgram(least_px: number): NodeProgramType {
  return class extends NodeProgram<(typeof UNIFORMS)[number]> {
    getDefinition() {
      return {
        VERTICES: 3,
        VERTEX_SHADER_SOURCE: VERTEX,
        FRAGMENT_SHADER_SOURCE: FRAGMENT,
        METHOD: TRIANGLES,
        UNIFORMS,
        ATTRIBUTES: [
          { name: 'a_position', size: 2, type: FLOAT },
          { name: 'a_size', size: 1, type: FLOAT },
          { name: 'a_form', size: 1, type: FLOAT },
          { name: 'a_color', size: 4, type: UNSIGNED_BYTE, normalized: true },
          { name: 'a_line', size: 4, type: UNSIGNED_BYTE, normalized: true },
          { name: 'a_id', size: 4, type: UNSIGNED_BYTE, normalized: true },
          { name: 'a_angle', size: 1, type: FLOAT },
        ],
      }
    }

    processVisibleItem(nodeIndex: number, start: number, data: MarkData) {
      const { x, y, size, form, color, line } = data
      const own = [x, y, size, form, floatColor(color), floatColor(line), nodeIndex]
      for (const [at, turn] of TURNS.entries()) this.array.set([...own, turn], start + at * (own.length + 1))
    }

    setUniforms({ correctionRatio, sizeRatio, matrix }: RenderParams, { gl, uniformLocations }: ProgramInfo) {
      gl.uniform1f(uniformLocations['u_correctionRatio'] ?? null, correctionRatio)
      gl.uniform1f(uniformLocations['u_sizeRatio'] ?? null, sizeRatio)
      gl.uniform1f(uniformLocations['u_least'] ?? null, least_px)
      gl.uniformMatrix3fv(uniformLocations['u_matrix'] ?? null, false, matrix)
    }
  }
}
