package prop_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/unit"
)

func TestAvailable(t *testing.T) {
	rating, free := unit.PoundForce(60), unit.MetresPerSecond(3)
	for _, c := range []struct{ way, pounds float64 }{{0, 60}, {1.5, 30}, {3, 0}, {4, 0}} {
		near(t, "pounds left", prop.Available(rating, unit.MetresPerSecond(c.way), free).PoundForce(), c.pounds, 1e-9)
	}
	// A quarter of the thrust is half of the prop's speed: it runs free at half.
	near(t, "a quarter at rest", prop.PartAvailable(rating, 0.25, 0, free).PoundForce(), 15, 1e-9)
	near(t, "a quarter at half of the free speed", prop.PartAvailable(rating, 0.25, 1.5, free).PoundForce(), 0, 1e-9)
	if prop.PartAvailable(rating, 0, 1, free) != 0 || prop.Available(rating, 1, 0) != 0 {
		t.Error("no throttle or no free speed gives no thrust")
	}
}

func TestShareForIsPartAvailableBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rating := unit.Force(rapid.Float64Range(50, 600).Draw(t, "rating"))
		share := rapid.Float64Range(0.05, 1).Draw(t, "share")
		free := unit.Speed(rapid.Float64Range(2, 4.5).Draw(t, "free"))
		way := free * unit.Speed(math.Sqrt(share)*rapid.Float64Range(0, 0.99).Draw(t, "way"))
		got := prop.ShareFor(rating, prop.PartAvailable(rating, share, way, free), way, free)
		if math.Abs(got-share) > 1e-9 {
			t.Fatalf("share %g came back as %g", share, got)
		}
	})
}

func TestRatingIsAvailableBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pull := unit.Force(rapid.Float64Range(0, 500).Draw(t, "pull"))
		free := unit.Speed(rapid.Float64Range(2, 4.5).Draw(t, "free"))
		way := free * unit.Speed(rapid.Float64Range(0, 0.95).Draw(t, "way"))
		r, err := prop.Rating(pull, way, free)
		if err != nil {
			t.Fatal(err)
		}
		if left := prop.Available(r, way, free); math.Abs(float64(left-pull)) > 1e-9*float64(pull)+1e-12 {
			t.Fatalf("a rating of %v leaves %v at %v, want %v", r, left, way, pull)
		}
	})
}

func TestNoRatingBeyondTheFreeSpeed(t *testing.T) {
	_, err := prop.Rating(100, 3.2, 3.1)
	var s *prop.SpeedError
	if !errors.As(err, &s) || s.Way != 3.2 || s.Free != 3.1 {
		t.Errorf("got %v, want a SpeedError that names both speeds", err)
	}
}

// A drag of k V^2 against a straight thrust line is a quadratic: the crossing is
// known exactly.
func TestTopSpeedAgainstTheQuadratic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rating := rapid.Float64Range(50, 600).Draw(t, "rating")
		free := rapid.Float64Range(2, 4.5).Draw(t, "free")
		k := rapid.Float64Range(1, 300).Draw(t, "k")
		share := rapid.Float64Range(0.05, 1).Draw(t, "share")
		n := math.Sqrt(share)
		b := rating * n / free
		want := (-b + math.Sqrt(b*b+4*k*rating*share)) / (2 * k)
		drag := func(u unit.Speed) unit.Force { return unit.Force(k * float64(u) * float64(u)) }
		u := prop.TopSpeed(unit.Force(rating), share, unit.Speed(free), prop.Near{}, drag)
		if math.Abs(float64(u)-want) > 1e-7 {
			t.Fatalf("crossing at %.9g, want %.9g", float64(u), want)
		}
		close := unit.Speed(want * rapid.Float64Range(0.7, 1.4).Draw(t, "near"))
		for rough, within := range map[bool]float64{false: 1e-7, true: 1e-3 * free} {
			u = prop.TopSpeed(unit.Force(rating), share, unit.Speed(free), prop.Near{Speed: close, Rough: rough}, drag)
			if math.Abs(float64(u)-want) > within {
				t.Fatalf("from %.4g (rough: %v) the crossing is at %.9g, want %.9g", float64(close), rough, float64(u), want)
			}
		}
	})
}

func TestCrossingAtTheEnds(t *testing.T) {
	fall := func(from unit.Force) func(unit.Speed) unit.Force {
		return func(u unit.Speed) unit.Force { return from - unit.Force(u) }
	}
	for _, c := range []struct{ from, want float64 }{{-1, 0}, {0, 0}, {9, 2}, {1.5, 1.5}} {
		for _, close := range []unit.Speed{0, 0.1, 1.9} {
			near(t, "crossing", float64(prop.Crossing(0, 2, prop.Near{Speed: close}, fall(unit.Force(c.from)))), c.want, 1e-3)
		}
	}
	if prop.TopSpeed(0, 1, 3, prop.Near{}, nil) != 0 || prop.TopSpeed(100, 0, 3, prop.Near{}, nil) != 0 {
		t.Error("no motor or no throttle gives no speed")
	}
}

func TestMoreThrustIsNeverSlower(t *testing.T) {
	drag := func(u unit.Speed) unit.Force { return unit.Force(25 * u * u * u) }
	before := unit.Speed(0)
	for pounds := 20.0; pounds <= 120; pounds += 5 {
		u := prop.TopSpeed(unit.PoundForce(pounds), 1, 3.1, prop.Near{}, drag)
		if u < before || u >= 3.1 {
			t.Errorf("%g lb makes %v m/s after %v", pounds, u, before)
		}
		before = u
	}
}

func BenchmarkTopSpeed(b *testing.B) {
	drag := func(u unit.Speed) unit.Force { return unit.Force(25 * u * u * u) }
	for b.Loop() {
		prop.TopSpeed(unit.PoundForce(55), 1, 3.1, prop.Near{}, drag)
	}
}
