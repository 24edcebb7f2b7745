"""A disc cut into rings, values in their middles: finite volumes in radius and height.

Not the grid of the program, whose nodes stand on the faces: here a face has half a ring before it.
"""

import numpy
import scipy.sparse
from scipy.optimize import brentq


def _edges(length, count, steep, both):
    """Returns the edges of rings that become the finer the nearer the face is."""
    share = numpy.linspace(0.0, 1.0, count + 1)
    if both:
        # Coarse in the middle, fine at both ends.
        fine = 1.0 - numpy.sinh(steep * (1.0 - numpy.abs(2.0 * share - 1.0))) / numpy.sinh(steep)
        return 0.5 * length * (1.0 + numpy.sign(2.0 * share - 1.0) * fine)
    return length * (1.0 - numpy.sinh(steep * (1.0 - share)) / numpy.sinh(steep))


def steepness(length, count, finest):
    """Returns how steep the rings must be for the last to be so fine, within reason."""
    wanted = min(max(finest * count / length, 0.012), 0.5)
    return brentq(lambda steep: steep / numpy.sinh(steep) - wanted, 0.1, 9.0)


class Disc:
    """The rings of a disc, or of its upper half."""

    def __init__(self, radius_m, height_m, rings, layers, whole, finest=None):
        """`whole`: over the whole height; otherwise the upper half, the mid-plane below. `finest`: the ring at a face, m, if it is not as usual."""
        length = height_m if whole else 0.5 * height_m
        steep = lambda length, count: 3.2 if finest is None else steepness(length, count, finest)
        r = _edges(radius_m, rings, steep(radius_m, rings), False)
        z = _edges(length, layers, steep(length, layers), whole)
        self.r, self.z = 0.5 * (r[1:] + r[:-1]), 0.5 * (z[1:] + z[:-1])
        area, thick = numpy.pi * (r[1:] ** 2 - r[:-1] ** 2), numpy.diff(z)
        self.shape = (rings, layers)
        self.volume = numpy.outer(area, thick).ravel()
        self.whole = whole
        number = numpy.arange(rings * layers).reshape(rings, layers)
        across = (2.0 * numpy.pi * r[1:-1] / numpy.diff(self.r))[:, None] * thick[None, :]
        along = area[:, None] / numpy.diff(self.z)[None, :]
        one = numpy.concatenate((number[:-1].ravel(), number[:, :-1].ravel()))
        other = numpy.concatenate((number[1:].ravel(), number[:, 1:].ravel()))
        links = numpy.concatenate((across.ravel(), along.ravel()))
        between = scipy.sparse.coo_matrix((links, (one, other)), shape=(number.size, number.size))
        between = (between + between.T).tocsr()
        # Times a potential it gives what flows into each ring, m.
        self.flow = (between - scipy.sparse.diags(numpy.asarray(between.sum(axis=1)).ravel())).tocsr()
        # Faces: which ring lies behind, its area, and the half ring before it.
        self.side = (number[-1], 2.0 * numpy.pi * radius_m * thick, numpy.full(layers, radius_m - self.r[-1]))
        self.top = (number[:, -1], area, numpy.full(rings, length - self.z[-1]))
        self.underside = (number[:, 0], area, numpy.full(rings, self.z[0]))

    def mean(self, values):
        """Returns the mean over the volume."""
        return float(self.volume @ values / self.volume.sum())

    def centre(self, values):
        """Returns the value at the centre: from the axis outwards it bends as a square, as does the height from the mid-plane."""
        field = values.reshape(self.shape)
        r = self.r[:2] ** 2
        axis = field[0] + (field[0] - field[1]) * r[0] / (r[1] - r[0])
        if self.whole:
            return float(numpy.interp(0.5 * (self.z[0] + self.z[-1]), self.z, axis))
        z = self.z[:2] ** 2
        return float(axis[0] + (axis[0] - axis[1]) * z[0] / (z[1] - z[0]))
