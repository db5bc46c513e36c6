import temml from "temml";
import type { Method } from "../../publication/published.ts";

/** What is counted, and not estimated. */
export const countedMethods = ["completeness", "identification", "dating", "custody", "likeness"] as const;

type CountedMethod = (typeof countedMethods)[number];

/** Each method's formula, in the notation of its source; the words around it are in shared/words. */
const formulas: Readonly<Record<Method | CountedMethod, readonly string[]>> = {
  completeness: [
    String.raw`\text{low} = \min\left( 1, \frac{a + s}{q} \right)`,
    String.raw`\text{high} = \min\left( 1, \frac{a + s + u + x}{q} \right)`,
    String.raw`\left[ \frac{\sum w \cdot \text{low}}{\sum w},\; \frac{\sum w \cdot \text{high}}{\sum w} \right]`,
  ],
  identification: [
    String.raw`H = \sum_v P_v \sum_i p_i \log_2 \frac{1}{p_i}`,
    String.raw`P_v = \sum_i \frac{1}{n k_i}, \qquad p_i = \frac{1}{n k_i P_v}`,
    String.raw`\min \sum_{f \in F} e_f`,
    String.raw`\forall\, i, j \;\; \exists\, f \in F : \;\; V_{f, i} \cap V_{f, j} = \varnothing`,
  ],
  dating: [String.raw`m_{\text{low}} > d_{\text{high}}`, String.raw`m_{\text{high}} < d_{\text{low}}`],
  custody: [
    String.raw`\frac{\left| Y \right|}{t_1 - t_0 + 1}`,
    String.raw`\left[ b_{\text{low}} - a_{\text{high}},\; b_{\text{high}} - a_{\text{low}} \right]`,
  ],
  likeness: [String.raw`S = \frac{\sum w s}{\sum w}, \qquad s = 1 - \left| x - y \right|`],
  documented: [],
  "serial-ranges": [
    String.raw`N = m + \frac{m}{k} - 1, \qquad \binom{m}{k} \big/ \binom{N_{\text{high}}}{k} \ge \alpha`,
    String.raw`N = \frac{(w - 1)(k + 1)}{k - 1} - 1`,
    String.raw`\frac{w + k (N_{\text{high}} - w)}{w} \binom{w}{k} \big/ \binom{N_{\text{high}}}{k} \ge \alpha`,
  ],
  coverage: [
    String.raw`C = 1 - \frac{f_1}{n} \cdot \frac{(n - 1) f_1}{(n - 1) f_1 + 2 f_2}`,
    String.raw`C = 1 - \frac{f_1}{n} \cdot \frac{(n - 1)(f_1 - 1)}{(n - 1)(f_1 - 1) + 2} \qquad (f_2 = 0)`,
  ],
  chao1: [
    String.raw`S = D + T, \qquad T = \frac{f_1 (f_1 - 1)}{2 (f_2 + 1)}`,
    String.raw`\operatorname{var} = \frac{f_1 (f_1 - 1)}{2 (f_2 + 1)} + \frac{f_1 (2 f_1 - 1)^2}{4 (f_2 + 1)^2} + \frac{f_1^2 f_2 (f_1 - 1)^2}{4 (f_2 + 1)^4} \;\; (f_2 > 0)`,
    String.raw`\operatorname{var} = \frac{f_1 (f_1 - 1)}{2} + \frac{f_1 (2 f_1 - 1)^2}{4} - \frac{f_1^4}{4 S} \;\; (f_2 = 0)`,
    String.raw`\left[ D + \frac{T}{K},\; D + T K \right], \qquad K = \exp\left( z \sqrt{\ln\left( 1 + \frac{\operatorname{var}}{T^2} \right)} \right)`,
    String.raw`\left[ D,\; \frac{D + z \sqrt{D P (1 - P)}}{1 - P} \right], \qquad P = e^{-n/D} \qquad (T = 0)`,
  ],
  chapman: [
    String.raw`N = \frac{(n_1 + 1)(n_2 + 1)}{m + 1} - 1`,
    String.raw`\operatorname{var} = \frac{(n_1 + 1)(n_2 + 1)(n_1 - m)(n_2 - m)}{(m + 1)^2 (m + 2)}`,
    String.raw`\left[ r + \frac{T}{K},\; r + T K \right], \qquad r = n_1 + n_2 - m,\; T = N - r`,
    String.raw`K = \exp\left( z \sqrt{\ln\left( 1 + \frac{\operatorname{var}}{T^2} \right)} \right)`,
  ],
  "survival-ratio": [
    String.raw`\frac{S}{N}, \qquad \left[ \frac{S_{\text{low}}}{N_{\text{high}}},\; \min\left( 1, \frac{S_{\text{high}}}{N_{\text{low}}} \right) \right]`,
  ],
  wilson: [
    String.raw`\frac{2 n p + z^2 \pm z \sqrt{z^2 + 4 n p q}}{2 (n + z^2)}, \qquad p = \frac{x}{n},\; q = 1 - p`,
  ],
  "share-of-survivors": [
    String.raw`S \cdot p, \qquad \left[ S_{\text{low}} \, p_{\text{low}},\; S_{\text{high}} \, p_{\text{high}} \right]`,
  ],
  garwood: [
    String.raw`\frac{k}{T}, \qquad \left[ \frac{\chi^2(\alpha/2;\, 2k)}{2T},\; \frac{\chi^2(1 - \alpha/2;\, 2k + 2)}{2T} \right]`,
  ],
  "gamma-poisson": [
    String.raw`P(W > t) = \left( \frac{T}{T + t} \right)^{k + 1/2}, \qquad t_{50} = T \left( 2^{1/(k + 1/2)} - 1 \right)`,
  ],
};

/** A strict Content-Security-Policy allows no style attribute; those that the library writes are niceties. */
const withoutStyle = (mathml: string): string => mathml.replace(/ style="[^"]*"/g, "");

/** The formulas of a method as MathML; the ends of an interval are named in the words of the site. */
export const formulasOf = (
  method: Method | CountedMethod,
  { low, high }: { readonly low: string; readonly high: string },
): readonly string[] =>
  formulas[method].map((tex) => {
    const told = tex.replaceAll("{low}", `{${low}}`).replaceAll("{high}", `{${high}}`);
    return withoutStyle(temml.renderToString(told, { displayMode: true, throwOnError: true }));
  });
