package main

type toleranceData struct {
	Study    string        `json:"study"`
	Variant  string        `json:"variant"`
	Samples  int           `json:"samples"`
	Seed     uint64        `json:"seed"`
	Sound    int           `json:"samples_without_failing_check"`
	Clipped  int           `json:"samples_held_in_range"`
	Spreads  []spreadSet   `json:"spreads"`
	Readings []distributed `json:"readings"`
	Checks   []judgedData  `json:"checks"`
}

type spreadSet struct {
	Key    string `json:"key"`
	Label  string `json:"label"`
	Spread string `json:"spread"`
}

type distributed struct {
	Key           string         `json:"key"`
	Label         string         `json:"label"`
	Unit          string         `json:"unit"`
	Samples       int            `json:"samples"`
	Mean          *float64       `json:"mean"`
	Deviation     *float64       `json:"sd"`
	P5            *float64       `json:"p5"`
	P50           *float64       `json:"p50"`
	P95           *float64       `json:"p95"`
	Contributions []contribution `json:"contributions"`
}

type contribution struct {
	Key   string  `json:"key"`
	Label string  `json:"label"`
	Share float64 `json:"share"`
	Rises bool    `json:"rises"`
}

type judgedData struct {
	Key         string  `json:"key"`
	Label       string  `json:"label"`
	Holds       int     `json:"holds"`
	Thin        int     `json:"thin"`
	Fails       int     `json:"fails"`
	NotRated    int     `json:"not_rated"`
	Absent      int     `json:"absent"`
	Probability float64 `json:"probability_not_failing"`
}
