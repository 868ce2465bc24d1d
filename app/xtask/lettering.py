"""Outlines of our lettering as paths, for cards that are drawn without a font.

Run by hand when the lettering changes, from the root of the project: `python3 app/xtask/lettering.py`; it needs fonttools
and brotli. In: public/fonts/lettering-400.woff2 and -700. Out: public/cards/lettering.json, which the program fetches when
a card is drawn. The figures are the tabular ones, so that columns of them stand under each other.

The outlines are the lettering, and under its licence: public/fonts/OFL.txt goes with them.
"""

import json
from fontTools.pens.basePen import BasePen
from fontTools.ttLib import TTFont

NOTE = "Outlines of Benchslate Lettering, under the SIL Open Font License 1.1: fonts/OFL.txt"


class Relative(BasePen):
    """A path in whole units, every point by its way from the one before it; up is plus, as in the font."""

    def __init__(self, glyphs):
        super().__init__(glyphs)
        self.at, self.start, self.text, self.last = (0, 0), (0, 0), [], None

    def _way(self, *points):
        ways = [(round(x) - self.at[0], round(y) - self.at[1]) for x, y in points]
        self.at = (round(points[-1][0]), round(points[-1][1]))
        return ways

    def _put(self, letter, numbers):
        said = "" if letter == self.last else letter
        for number in numbers:
            text = str(number)
            parted = said == "" or said[-1].isalpha() or text.startswith("-")
            said += text if parted and said != "" else (" " + text if text[0] != "-" else text)
        self.text.append(said)
        self.last = letter

    def _moveTo(self, point):
        ((x, y),) = self._way(point)
        self.start, self.last = self.at, None
        self._put("m", (x, y))

    def _lineTo(self, point):
        ((x, y),) = self._way(point)
        if x or y:
            self._put(*(("h", (x,)) if y == 0 else ("v", (y,)) if x == 0 else ("l", (x, y))))

    def _qCurveToOne(self, by, to):
        by, to = self._way(by)[0], None or to
        # The second point is told from where the curve began, as a path has it.
        began = (self.at[0] - by[0], self.at[1] - by[1])
        x, y = round(to[0]) - began[0], round(to[1]) - began[1]
        self.at = (round(to[0]), round(to[1]))
        self._put("q", (*by, x, y))

    def _curveToOne(self, one, two, to):
        began = self.at
        points = [(round(x) - began[0], round(y) - began[1]) for x, y in (one, two, to)]
        self.at = (round(to[0]), round(to[1]))
        self._put("c", [number for point in points for number in point])

    def _closePath(self):
        self.text.append("z")
        self.at, self.last = self.start, None


def tabular(font):
    """Glyphs that the feature `tnum` puts in place of others."""
    table = font["GSUB"].table
    wanted = {index for it in table.FeatureList.FeatureRecord if it.FeatureTag == "tnum" for index in it.Feature.LookupListIndex}
    swaps = {}
    for index in wanted:
        for part in table.LookupList.Lookup[index].SubTable:
            swaps.update(getattr(part, "ExtSubTable", part).mapping)
    return swaps


def pen(path):
    font = TTFont(path)
    glyphs, swaps = font.getGlyphSet(), tabular(font)
    letters = {}
    for code, name in sorted(font.getBestCmap().items()):
        if code < 32 or code == 0xAD:
            continue
        name = swaps.get(name, name)
        drawn = Relative(glyphs)
        glyphs[name].draw(drawn)
        letters[chr(code)] = [round(glyphs[name].width), "".join(drawn.text)]
    return font, letters


def row(letters):
    """Widths and paths in the order of the letters, a path a line."""
    return {"widths": [width for width, _ in letters.values()], "paths": "\n".join(path for _, path in letters.values())}


def main():
    (font, one), (_, two) = (pen(f"public/fonts/lettering-{weight}.woff2") for weight in (400, 700))
    assert list(one) == list(two)
    whole = {"note": NOTE, "em": font["head"].unitsPerEm, "cap": font["OS/2"].sCapHeight}
    whole |= {"letters": "".join(one), "pens": [row(one), row(two)]}
    text = json.dumps(whole, ensure_ascii=False, separators=(",", ":"))
    with open("public/cards/lettering.json", "w", encoding="utf-8") as out:
        out.write(text + "\n")


main()
