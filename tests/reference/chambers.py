"""The chambers of a rotary engine as Shapely polygons of many sides, for checking port areas.

Definitions (mm, radians): the bore is (e cos 3t + R cos t, e sin 3t + R sin t) offset outward by a.
The rotor's centre is e(cos th, sin th), the rotor is turned by th/3, its flank is the inner envelope
of the bore, offset by o (a for the flank's edge, less for the side seal's line). Chamber k lies
between bore and flank k, from apex k to apex k + 1, parted from its neighbours by the line from the
figure's corner (or nose) to the apex seal's contact.
"""

import numpy as np
import shapely
from numpy import arcsin, cos, exp, pi, sin, sqrt

THIRD = 2 * pi / 3


def bore(e, r, a, t):
    """Points of the bore as complex numbers."""
    normal = r * exp(1j * t) + 3 * e * exp(3j * t)
    return r * exp(1j * t) + e * exp(3j * t) + a * normal / abs(normal)


def flank(e, r, o, u):
    """Points of the offset inner envelope in the rotor's frame, u from 0 to a third of a turn."""
    s = 3 * e / r * cos(1.5 * u)
    return exp(1j * u) * (r - (2 * e * sin(1.5 * u) - o) * (sqrt(1 - s * s) + 1j * s))


def figure(e, r, o, count):
    """One third of the sealing figure and where it begins: u of the first end."""
    if o >= 0:
        return flank(e, r, o, np.linspace(0, THIRD, count))
    low, high = 0.0, pi / 6
    for _ in range(80):
        middle = (low + high) / 2
        if flank(e, r, o, middle).imag < 0:
            low = middle
        else:
            high = middle
    return flank(e, r, o, np.linspace(low, THIRD - low, count))


def polygon(ring):
    """The ring as a polygon. Of points nearer than a millionth of a µm only one is kept: between
    them rounding would make the sides cross."""
    ring = ring[abs(ring - np.roll(ring, 1)) > 1e-9]
    return shapely.Polygon(np.column_stack([ring.real, ring.imag]))


class Engine:
    """An engine with its sealing figure, ready to give chambers."""

    def __init__(self, e, r, a, inset, count):
        self.e, self.r, self.a, self.o, self.count = e, r, a, a - inset, count
        self.flank = figure(e, r, self.o, count)

    def lean(self, t):
        return np.angle(self.r + 3 * self.e * exp(2j * t))

    def root(self, t):
        """Where the apex seal begins, in its apex's frame."""
        if self.o < 0:
            return complex(abs(self.flank[0]))
        return self.r + self.o * exp(1j * self.lean(t))

    def nose(self, start, end):
        if self.o <= 0:
            return np.empty(0, complex)
        return self.r + self.o * exp(1j * np.linspace(start, end, 400))

    def chamber(self, k, theta):
        """Chamber k as one ring: along the bore and back along the figure.

        Its two ends are cusps, where sides of finite length may cross each other.
        """
        swept, sealed = self.rings(k, theta)
        return polygon(np.concatenate([swept[2:-1], sealed[:0:-1]]))

    def sectors(self, k, theta):
        """The bore's sector of chamber k seen from the rotor's centre, and the figure's: the chamber
        is the first less the second, without a cusp in either."""
        return [polygon(ring) for ring in self.rings(k, theta)]

    def rings(self, k, theta):
        """Both sectors as rings that begin at the rotor's centre and the first apex seal's root."""
        first = theta / 3 + THIRD * k
        second = first + THIRD
        greatest = arcsin(3 * self.e / self.r)
        # In the frame of apex k.
        roots = [self.root(first)], [exp(1j * THIRD) * self.root(second)]
        sealed = np.concatenate([
            [0],
            roots[0],
            self.nose(self.lean(first), greatest),
            self.flank,
            exp(1j * THIRD) * self.nose(-greatest, self.lean(second)),
            roots[1],
        ])
        centre = self.e * exp(1j * theta)
        arc = bore(self.e, self.r, self.a, np.linspace(first, second, self.count))
        arc = (arc - centre) * exp(-1j * first)
        swept = np.concatenate([[0], roots[0], arc, roots[1]])
        return [centre + ring * exp(1j * first) for ring in (swept, sealed)]

    def open_area(self, port, k, theta):
        """The area of the port open to chamber k."""
        swept, sealed = self.sectors(k, theta)
        return port.intersection(swept).area - port.intersection(sealed).area

    def whole_figure(self, theta):
        """The sealing figure, all three thirds of it."""
        greatest = arcsin(3 * self.e / self.r)
        third = np.concatenate([self.nose(-greatest, greatest)[:-1], self.flank[:-1]])
        ring = np.concatenate([third * exp(1j * THIRD * k) for k in range(3)])
        return polygon(self.e * exp(1j * theta) + ring * exp(1j * theta / 3))

    def is_open(self, port, k, theta):
        """Whether more than rounding of the port lies in chamber k."""
        uncovered = port.difference(self.whole_figure(theta))
        return uncovered.intersection(self.sectors(k, theta)[0]).area > 1e-10

    def whole_bore(self):
        turn = np.linspace(0, 2 * pi, 6 * self.count, endpoint=False)
        return polygon(bore(self.e, self.r, self.a, turn))
