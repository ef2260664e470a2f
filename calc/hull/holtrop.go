package hull

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A Ship is what the method of Holtrop and Mennen asks for: J. Holtrop and
// G. G. J. Mennen, An approximate power prediction method, International
// Shipbuilding Progress 29 (1982), no. 335. The symbols of the paper stand in the
// comments.
//
// It is here to prove the parts that the small-boat model borrows (friction,
// transom) on the paper's own example. Its data are ships of Cp 0.55 to 0.85,
// L/B 3.9 to 15, B/T 2.1 to 4: a 14-foot skiff is far outside.
type Ship struct {
	Length           unit.Length // L, on the waterline
	Beam             unit.Length // B
	DraughtFore      unit.Length // T_F
	DraughtAft       unit.Length // T_A
	Volume           unit.Volume
	CentreOfBuoyancy float64     // lcb, percent of L forward of its middle
	BulbArea         unit.Area   // A_BT, section of the bulb at the fore perpendicular
	BulbCentre       unit.Length // h_B, its centre above the keel
	Midship          float64     // C_M, bare
	Waterplane       float64     // C_WP, bare
	TransomArea      unit.Area   // A_T
	Appendages       unit.Area   // S_APP
	AppendageFactor  float64     // 1 + k2, bare, about 1.5
	SternShape       float64     // C_stern: -10 V, 0 normal, +10 U sections
}

// Coefficients are the intermediate results, by the paper's names; all bare but
// LR (m), IE (degrees) and S (m2).
type Coefficients struct {
	Fn, CB, CP, LR, C12, C13, K1, S      float64
	C7, IE, C1, C3, C2, C5, C16, M1, C15 float64
	M2, Lambda, PB, Fni, FnT, C6, C4, CA float64
}

// Resistances are the parts of the paper's total.
type Resistances struct {
	Friction    unit.Force // R_F by the ITTC-1957 line, without the form factor
	Viscous     unit.Force // R_F (1 + k1)
	Appendages  unit.Force // R_APP
	Wave        unit.Force // R_W
	Bulb        unit.Force // R_B
	Transom     unit.Force // R_TR
	Correlation unit.Force // R_A
}

// Total is the sum of the parts.
func (r Resistances) Total() unit.Force {
	return r.Viscous + r.Appendages + r.Wave + r.Bulb + r.Transom + r.Correlation
}

// gravity1982 is the acceleration of gravity that the paper's example used.
const gravity1982 = 9.81

// Resistance computes the coefficients and the resistance at a speed. The wave
// part holds up to a Froude number of 0.45, beyond which it returns a
// *band.OutsideError.
func (s *Ship) Resistance(w Water, u unit.Speed) (Coefficients, Resistances, error) {
	c := s.form()
	v, l := float64(u), float64(s.Length)
	c.Fn = v / math.Sqrt(gravity1982*l)
	if err := band.Within("froude number of the 1982 method", "", c.Fn, 0.01, 0.45); err != nil {
		return c, Resistances{}, err
	}
	q := 0.5 * float64(w.Density) * v * v
	cf := ITTC57(Reynolds(u, s.Length, w.Viscosity))
	var r Resistances
	r.Friction = unit.Force(q * c.S * cf)
	r.Viscous = r.Friction * unit.Force(c.K1)
	r.Appendages = unit.Force(q * float64(s.Appendages) * s.AppendageFactor * cf)
	r.Wave = s.wave(&c, float64(w.Density))
	r.Bulb = s.bulb(&c, v, float64(w.Density))
	if s.TransomArea > 0 {
		c.FnT = v / math.Sqrt(2*gravity1982*float64(s.TransomArea)/(float64(s.Beam)*(1+s.Waterplane)))
		c.C6 = transomCoefficient(c.FnT)
		r.Transom = unit.Force(q * float64(s.TransomArea) * c.C6)
	}
	// The example's figure comes out with the appendages' area counted in.
	r.Correlation = unit.Force(q * (c.S + float64(s.Appendages)) * c.CA)
	return c, r, nil
}

// form computes what depends on the ship alone.
func (s *Ship) form() Coefficients {
	l, b, vol := float64(s.Length), float64(s.Beam), s.Volume.CubicMetres()
	t := float64(s.DraughtFore+s.DraughtAft) / 2
	abt, hb, tf := float64(s.BulbArea), float64(s.BulbCentre), float64(s.DraughtFore)
	cm, cwp, lcb := s.Midship, s.Waterplane, s.CentreOfBuoyancy
	var c Coefficients
	c.CB = vol / (l * b * t)
	c.CP = c.CB / cm
	c.LR = l * (1 - c.CP + 0.06*c.CP*lcb/(4*c.CP-1))
	switch tl := t / l; {
	case tl > 0.05:
		c.C12 = math.Pow(tl, 0.2228446)
	case tl > 0.02:
		c.C12 = 48.20*math.Pow(tl-0.02, 2.078) + 0.479948
	default:
		c.C12 = 0.479948
	}
	c.C13 = 1 + 0.003*s.SternShape
	c.K1 = c.C13 * (0.93 + c.C12*math.Pow(b/c.LR, 0.92497)*math.Pow(0.95-c.CP, -0.521448)*math.Pow(1-c.CP+0.0225*lcb, 0.6906))
	c.S = l*(2*t+b)*math.Sqrt(cm)*(0.453+0.4425*c.CB-0.2862*cm-0.003467*b/t+0.3696*cwp) + 2.38*abt/c.CB
	c.IE = 1 + 89*math.Exp(-math.Pow(l/b, 0.80856)*math.Pow(1-cwp, 0.30484)*
		math.Pow(1-c.CP-0.0225*lcb, 0.6367)*math.Pow(c.LR/b, 0.34574)*math.Pow(100*vol/(l*l*l), 0.16302))
	switch bl := b / l; {
	case bl < 0.11:
		c.C7 = 0.229577 * math.Pow(bl, 0.33333)
	case bl <= 0.25:
		c.C7 = bl
	default:
		c.C7 = 0.5 - 0.0625*l/b
	}
	c.C1 = 2223105 * math.Pow(c.C7, 3.78613) * math.Pow(t/b, 1.07961) * math.Pow(90-c.IE, -1.37565)
	c.C3 = 0.56 * math.Pow(abt, 1.5) / (b * t * (0.31*math.Sqrt(abt) + tf - hb))
	c.C2 = math.Exp(-1.89 * math.Sqrt(c.C3))
	c.C5 = 1 - 0.8*float64(s.TransomArea)/(b*t*cm)
	if c.CP < 0.80 {
		c.C16 = 8.07981*c.CP - 13.8673*c.CP*c.CP + 6.984388*c.CP*c.CP*c.CP
	} else {
		c.C16 = 1.73014 - 0.7067*c.CP
	}
	c.M1 = 0.0140407*l/t - 1.75254*math.Cbrt(vol)/l - 4.79323*b/l - c.C16
	c.Lambda = 1.446*c.CP - 0.36
	if l/b < 12 {
		c.Lambda = 1.446*c.CP - 0.03*l/b
	}
	switch x := l * l * l / vol; {
	case x < 512:
		c.C15 = -1.69385 // printed with a plus sign in the paper's example, meant as minus
	case x > 1727:
		c.C15 = 0
	default:
		c.C15 = -1.69385 + (l/math.Cbrt(vol)-8)/2.36
	}
	c.C4 = min(tf/l, 0.04)
	c.CA = 0.006*math.Pow(l+100, -0.16) - 0.00205 + 0.003*math.Sqrt(l/7.5)*math.Pow(c.CB, 4)*c.C2*(0.04-c.C4)
	return c
}

// wave is R_W = c1 c2 c5 volume rho g exp{m1 Fn^-0.9 + m2 cos(lambda Fn^-2)}.
func (s *Ship) wave(c *Coefficients, rho float64) unit.Force {
	f2 := 1 / (c.Fn * c.Fn)
	c.M2 = c.C15 * c.CP * c.CP * math.Exp(-0.1*f2)
	return unit.Force(c.C1 * c.C2 * c.C5 * s.Volume.CubicMetres() * rho * gravity1982 *
		math.Exp(c.M1*math.Pow(c.Fn, -0.9)+c.M2*math.Cos(c.Lambda*f2)))
}

// bulb is R_B, the pressure of a bulb near the surface.
func (s *Ship) bulb(c *Coefficients, v, rho float64) unit.Force {
	abt := float64(s.BulbArea)
	if abt <= 0 {
		return 0
	}
	tf, hb := float64(s.DraughtFore), float64(s.BulbCentre)
	c.PB = 0.56 * math.Sqrt(abt) / (tf - 1.5*hb)
	c.Fni = v / math.Sqrt(gravity1982*(tf-hb-0.25*math.Sqrt(abt))+0.15*v*v)
	f2 := c.Fni * c.Fni
	return unit.Force(0.11 * math.Exp(-3/(c.PB*c.PB)) * f2 * c.Fni * math.Pow(abt, 1.5) * rho * gravity1982 / (1 + f2))
}
