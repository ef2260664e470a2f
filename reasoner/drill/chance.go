package drill

// chance is a small source of chance that gives the same numbers from the same
// seed on every machine: SplitMix64 (Steele, Lea and Flood, "Fast splittable
// pseudorandom number generators", OOPSLA 2014, figure 9).
type chance struct{ state uint64 }

func (c *chance) next() uint64 {
	c.state += 0x9e3779b97f4a7c15
	z := c.state
	z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9
	z = (z ^ (z >> 27)) * 0x94d049bb133111eb
	return z ^ (z >> 31)
}

// below is a number from 0 to n-1; n must be at least 1. The bias of the
// remainder is below one part in 10^15 for the small n used here.
func (c *chance) below(n int) int { return int(c.next() % uint64(n)) }

// share is true with a chance of percent in a hundred.
func (c *chance) share(percent int) bool { return c.below(100) < percent }

// between is a multiple of step from low to high, both included where they are
// multiples; low when no multiple lies between them.
func (c *chance) between(low, high, step int) int {
	from := (low + step - 1) / step
	to := high / step
	if to < from {
		return low
	}
	return step * (from + c.below(to-from+1))
}

// pick is one of the list, which must not be empty.
func pick[T any](c *chance, list []T) T { return list[c.below(len(list))] }

// mixed makes one seed of two numbers.
func mixed(a, b uint64) uint64 {
	c := chance{a}
	c.state = c.next() ^ b
	return c.next()
}
